/** `npm start` serves the built app and ends on Ctrl-C. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { expect, onTestFinished, test } from 'vitest';
import { root } from '../../src/setup/run.mjs';

const freePort = async (): Promise<number> => {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  server.close();
  await once(server, 'close');
  if (address === null || typeof address === 'string') throw new Error('no port');
  return address.port;
};

test('npm start serves the page and its parts with their types, and Ctrl-C ends it cleanly', async () => {
  const port = await freePort();
  const child = spawn(process.execPath, [join(root, 'src/setup/start.mjs')], {
    env: { ...process.env, PORT: String(port) },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  const [line] = await once(createInterface(child.stdout), 'line');
  expect(line).toBe(`Loose Tie is at http://localhost:${port}/ (Ctrl-C ends it)`);

  const page = await fetch(`http://localhost:${port}/`);
  expect(page.status).toBe(200);
  expect(page.headers.get('content-type')).toContain('text/html');
  expect(page.headers.get('cache-control')).toBe('no-cache');
  const script = /<script[^>]*src="\.\/([^"]+)"/.exec(await page.text())?.[1];
  const code = await fetch(`http://localhost:${port}/${script}`);
  expect(code.status).toBe(200);
  expect(code.headers.get('content-type')).toContain('javascript');
  expect((await fetch(`http://localhost:${port}/no/such/file.js`)).status).toBe(404);

  child.kill('SIGINT');
  const [exitCode] = await once(child, 'exit');
  expect(exitCode).toBe(0);
});
