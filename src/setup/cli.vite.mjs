// @ts-check
/** How vite builds the command line: one file for Node, packages left to node_modules. */
import { defineConfig } from 'vite';
import { root } from './run.mjs';

export default defineConfig({
  root,
  publicDir: false,
  build: {
    ssr: 'src/cli/main.ts',
    target: 'node20',
    minify: false,
    rolldownOptions: { output: { entryFileNames: 'main.mjs', codeSplitting: false } },
  },
});
