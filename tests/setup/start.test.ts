/** `npm start` says what is wrong before it does any work. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { expect, onTestFinished, test } from 'vitest';
import { root } from '../../src/setup/run.mjs';
import { portFrom } from '../../src/setup/serve.mjs';

const start = async (port: string): Promise<{ code: number | null; out: string; err: string }> => {
  const child = spawn(process.execPath, [join(root, 'src/setup/start.mjs')], {
    env: { ...process.env, PORT: port },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const [out, err] = await Promise.all([text(child.stdout), text(child.stderr), once(child, 'close')]);
  return { code: child.exitCode, out, err };
};

const busyPort = async (host: string): Promise<number> => {
  const server = createServer().listen(0, host);
  await once(server, 'listening');
  onTestFinished(() => void server.close());
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('no port');
  return address.port;
};

test.each(['127.0.0.1', '0.0.0.0'])(
  'a port that another server holds on %s is named, with the way out',
  async (host) => {
    const port = await busyPort(host);
    expect(await start(String(port))).toEqual({
      code: 1,
      out: '',
      err: `setup: port ${port} is in use: stop what uses it, or choose another, as in PORT=${port + 1} npm start\n`,
    });
  },
);

test.each(['http', '0', '65536', '-1', '4173.5', '1e3'])('PORT=%s is refused', async (port) => {
  expect(() => portFrom(port)).toThrow(`PORT is "${port}": a whole number from 1 to 65535 is expected`);
});

test('a bad PORT ends with one line and exit code 1', async () => {
  expect(await start('harbour')).toEqual({
    code: 1,
    out: '',
    err: 'setup: PORT is "harbour": a whole number from 1 to 65535 is expected\n',
  });
});

test('the port is 4173 without PORT', () => {
  expect([portFrom(undefined), portFrom(''), portFrom('8080')]).toEqual([4173, 4173, 8080]);
});
