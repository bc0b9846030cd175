/** Draws and proves a variant beside the page, telling how far it is. */
import { parFile } from '../engine/proof/parForm.ts';
import { another } from '../engine/variants/generate.ts';
import type { FromDrawer, ToDrawer } from './drawer.ts';

const tell = (told: FromDrawer): void => self.postMessage(told);

self.onmessage = ({ data: { base, grade, seed } }: MessageEvent<ToDrawer>) => {
  const { variant, draws } = another(base, grade, seed, (done) => tell({ draws: done }));
  if (variant === null) tell({ gaveUp: draws });
  else tell({ yaml: variant.yaml, par: parFile(variant.proof) });
};
