"""Runs notebooks one after the other with Jupyter's own nbclient: folder, then file names. Prints each one's seconds."""

import sys
import time
from pathlib import Path

import nbformat
from nbclient import NotebookClient

folder = Path(sys.argv[1])
for name in sys.argv[2:]:
    began = time.perf_counter()
    notebook = nbformat.read(folder / name, as_version=4)
    where = {"metadata": {"path": str(folder)}}
    NotebookClient(notebook, timeout=120, kernel_name="tslab", resources=where, coalesce_streams=True).execute()
    nbformat.validate(notebook)
    nbformat.write(notebook, folder / name)
    print(name, round(time.perf_counter() - began, 3), flush=True)
