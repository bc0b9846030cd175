// Writes assets/sounds/*.wav, the same bytes every time. Run: npm run sounds
import { mkdirSync, writeFileSync } from 'node:fs';
import { makeSounds } from './sounds.mjs';

const folder = new URL('../../../assets/sounds/', import.meta.url);
mkdirSync(folder, { recursive: true });
let total = 0;
for (const [name, bytes] of makeSounds()) {
  writeFileSync(new URL(name, folder), bytes);
  total += bytes.length;
  console.log(`${name} ${bytes.length}`);
}
console.log(`total ${total}`);
