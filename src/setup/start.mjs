// @ts-check
/** `npm start`: installs and builds what is missing, serves the built app, prints its address, ends on Ctrl-C. */
import { buildApp } from './build.mjs';
import { install } from './install.mjs';
import { main, root } from './run.mjs';
import { checkPort, portFrom, serve } from './serve.mjs';

await main(async () => {
  const port = portFrom(process.env.PORT);
  await checkPort(port);
  install(root);
  buildApp(root);
  const { url, close } = await serve(root, port);
  process.stdout.write(`Loose Tie is at ${url} (Ctrl-C ends it)\n`);
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM'])) {
    process.once(signal, async () => {
      await close();
      process.exit(0);
    });
  }
});
