"""JupyterLab that stops, kernels and all, when the command that started it lets go of its standard input or is gone."""

import os
import sys
import threading

from jupyter_server.serverapp import ServerApp
from jupyterlab.labapp import main


def stop_when_let_go():
    sys.stdin.buffer.read()
    server = ServerApp.instance() if ServerApp.initialized() else None
    if getattr(server, "io_loop", None):
        server.stop(from_signal=True)
    else:
        os._exit(0)  # still loading, so there is no kernel to stop


threading.Thread(target=stop_when_let_go, daemon=True).start()
sys.exit(main())
