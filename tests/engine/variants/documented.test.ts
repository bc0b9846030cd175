/** The file of bounds that DEVELOPERS.md shows is a good one. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { parseBounds } from '../../../src/engine/variants/boundsForm.ts';
import { root } from '../../../src/setup/run.mjs';

it('shows bounds that can be read', () => {
  const [, shown = ''] =
    /```yaml\n(format: loose-tie-bounds\n[\s\S]*?)```/.exec(readFileSync(join(root, 'DEVELOPERS.md'), 'utf8')) ?? [];
  const read = parseBounds(shown, 'DEVELOPERS.md');
  expect(read).toMatchObject({ ok: true, file: { name: 'Wet nights on hooks', bounds: { end: 'restored' } } });
});
