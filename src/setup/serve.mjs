// @ts-check
/** Serves the built app with vite's preview server, on this machine only. Only Node built-ins until it is called. */
import { createServer } from 'node:net';
import { join } from 'node:path';
import { SetupError } from './run.mjs';

/** The port that PORT asks for, 4173 without it. @param {string | undefined} text */
export const portFrom = (text) => {
  if (text === undefined || text === '') return 4173;
  const port = Number(text);
  if (!/^\d+$/.test(text) || port < 1 || port > 65535) {
    throw new SetupError(`PORT is "${text}": a whole number from 1 to 65535 is expected`);
  }
  return port;
};

/** @param {number} port @param {string} host @returns {Promise<string | undefined>} */
const listenError = (port, host) =>
  new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', (/** @type {NodeJS.ErrnoException} */ error) => resolve(error.code));
    probe.listen(port, host, () => probe.close(() => resolve(undefined)));
  });

/** Throws a SetupError if the port cannot be had on either loopback address; a machine may lack the second. @param {number} port */
export const checkPort = async (port) => {
  for (const host of ['127.0.0.1', '::1']) {
    const code = await listenError(port, host);
    if (code === 'EADDRINUSE') {
      throw new SetupError(
        `port ${port} is in use: stop what uses it, or choose another, as in PORT=${port + 1} npm start`,
      );
    }
    if (code === 'EACCES') throw new SetupError(`port ${port} is not allowed for this user: choose one from 1024 up`);
  }
};

/**
 * Serves dist/ under root; port 0 takes any free one.
 * @param {string} root @param {number} port
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export const serve = async (root, port) => {
  const { preview } = await import('vite');
  const server = await preview({
    root,
    configFile: false,
    appType: 'mpa',
    logLevel: 'warn',
    build: { outDir: join(root, 'dist') },
    preview: { host: '127.0.0.1', port, strictPort: true, open: false },
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('the server has no port');
  return { url: `http://localhost:${address.port}/`, close: () => server.close() };
};
