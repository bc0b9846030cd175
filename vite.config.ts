import { fileURLToPath } from 'node:url';
import { playwright } from '@vitest/browser-playwright';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { browserArgs, findBrowser } from './src/setup/browser.mjs';
import { startTrace, stopTrace } from './tests/scene/processorTime.ts';

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/**
 * Phaser 4.2.1 picks the texture of a multi-texture batch with `outTexDatum == float(INDEX)` on an interpolated
 * varying (phaserjs/phaser#7372): rotated sprites of different textures lose wedges, always in software rendering.
 */
const fixPhaser = (code: string): string => {
  const out = code
    .replaceAll('outTexDatum == 0.0', 'outTexDatum < 0.5')
    .replaceAll('outTexDatum == float(INDEX)', 'outTexDatum < float(INDEX) + 0.5');
  if (out === code) throw new Error('phaser-texture-fix: pattern is gone, drop the plugin');
  return out;
};
const phaserTextureFix: Plugin = {
  name: 'phaser-texture-fix',
  enforce: 'pre',
  transform: { filter: { id: /phaser\.esm\.js/ }, handler: (code) => ({ code: fixPhaser(code), map: null }) },
};

const inBrowser = {
  enabled: true,
  headless: true,
  screenshotFailures: false,
  viewport: { width: 1280, height: 720 },
  instances: [{ browser: 'chromium' as const }],
  provider: playwright({
    launchOptions: { executablePath: findBrowser() ?? undefined, chromiumSandbox: false, args: browserArgs },
    contextOptions: { reducedMotion: 'reduce' },
  }),
};

export default defineConfig({
  root: at('./src'),
  base: './',
  publicDir: false,
  cacheDir: at('./node_modules/.vite'),
  plugins: [phaserTextureFix],
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  optimizeDeps: {
    include: ['howler', 'yaml', 'zod', 'preact', '@preact/signals', 'xstate', 'idb', 'three', 'phaser'],
    rolldownOptions: { plugins: [phaserTextureFix as never] },
  },
  server: { fs: { allow: [at('.')] } },
  build: {
    outDir: at('./dist'),
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1600,
    rolldownOptions: {
      output: {
        // The picture is fetched when a drill is taken; each engine in a chunk of its own, so that one can stay cached.
        codeSplitting: {
          groups: [
            { name: 'phaser', test: /node_modules[\\/]phaser/ },
            { name: 'three', test: /node_modules[\\/]three/ },
          ],
        },
      },
    },
  },
  test: {
    root: at('.'),
    reporters: ['default', './src/setup/plain-reporter.ts'],
    allowOnly: false,
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    benchmark: { include: ['tests/**/*.bench.ts'] },
    // Groups run one after the other, so that two cores never serve a browser and a worker at once.
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          environment: 'node',
          // The engine is read once a worker, not once a file: a third of the time. What tests change they put back.
          isolate: false,
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/**/*.{browser,e2e,long,frames}.test.{ts,tsx}'],
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/**/*.browser.test.{ts,tsx}'],
          sequence: { groupOrder: 1 },
          maxWorkers: 1,
          browser: inBrowser,
        },
      },
      {
        extends: true,
        test: {
          name: 'e2e',
          environment: 'node',
          include: ['tests/**/*.e2e.test.ts'],
          globalSetup: ['tests/e2e/serve.ts'],
          sequence: { groupOrder: 2 },
          maxWorkers: 1,
          testTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'long-browser',
          include: ['tests/**/*.browser.long.test.ts'],
          sequence: { groupOrder: 4 },
          maxWorkers: 1,
          testTimeout: 1_200_000,
          hookTimeout: 600_000,
          // UPDATE=1 writes pinned tables anew.
          provide: { update: process.env.UPDATE === '1' },
          browser: inBrowser,
        },
      },
      {
        extends: true,
        test: {
          name: 'frames',
          include: ['tests/**/*.frames.test.ts'],
          sequence: { groupOrder: 5 },
          maxWorkers: 1,
          testTimeout: 300_000,
          hookTimeout: 300_000,
          browser: { ...inBrowser, commands: { startTrace, stopTrace } },
        },
      },
      {
        extends: true,
        test: {
          name: 'long',
          environment: 'node',
          include: ['tests/**/*.long.test.ts'],
          exclude: ['tests/**/*.browser.long.test.ts'],
          sequence: { groupOrder: 3 },
          testTimeout: 1_200_000,
        },
      },
    ],
  },
});
