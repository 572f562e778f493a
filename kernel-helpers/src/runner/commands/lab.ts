import { projectFolder } from '../find/project-folder.js';
import { startJupyterLab } from '../lab/jupyter-lab.js';
import { pythonEnvironment } from '../lab/python-environment.js';
import { registerKernel, unregisterKernel, userKernelFolder } from '../lab/register-kernel.js';

/**
 * `npm run lab`: opens the sheets in JupyterLab until Ctrl-C, after making its Python environment on first use.
 *
 * @param said  `no-browser` prints the address and opens nothing; `register` and `unregister` let VS Code find the kernel,
 *   or take that back, and start nothing
 * @param opens  the sheet or folder to open, as {@link findSheet} gives it; the folder of sheets when empty
 * @returns when JupyterLab and its kernels have stopped
 * @throws ShopError  when Python, a package or the server is missing, with what to do
 */
export async function lab(said: ReadonlySet<string>, opens = ''): Promise<void> {
  const root = projectFolder();
  const say = (line: string) => console.log(line);
  if (said.has('register')) return registerKernel(root, userKernelFolder(), say);
  if (said.has('unregister')) return unregisterKernel(userKernelFolder(), say);

  const environment = await pythonEnvironment(root, say);
  say('Starting JupyterLab ...');
  const server = await startJupyterLab(root, environment, {
    openBrowser: !said.has('no-browser'),
    opens: opens || 'worksheets',
  });
  say(`The sheets are open at ${server.address}`);
  say('Ctrl-C here stops JupyterLab and its kernels.');
  let stopping = false;
  const stop = () => {
    if (stopping) return;
    stopping = true;
    say('Stopping JupyterLab and its kernels ...');
    server.stop();
  };
  // One Ctrl-C can come twice: from the terminal, and passed on by npm.
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, stop);
  await server.ended;
}
