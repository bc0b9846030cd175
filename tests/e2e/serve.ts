/** Before the end-to-end tests: builds the app if stale and serves it on a free port, handed to them as `appUrl`. */
import type { TestProject } from 'vitest/node';
import { buildApp } from '../../src/setup/build.mjs';
import { root } from '../../src/setup/run.mjs';
import { serve } from '../../src/setup/serve.mjs';

declare module 'vitest' {
  export interface ProvidedContext {
    appUrl: string;
  }
}

export default async (project: TestProject): Promise<() => Promise<void>> => {
  buildApp(root);
  const { url, close } = await serve(root, 0);
  project.provide('appUrl', url);
  return close;
};
