/** Runs this program again in processes of its own and hands over what each prints, line by line. */
import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { BadUse } from './io.ts';

/** Megabytes for what is young: most of what a search makes is gone at once, and the 16 of old are full too soon. */
const YOUNG = 32;

/** One run; its errors show, its lines go to `line`. Exit 0 and 1 are results, anything else is told. */
export const apart = (args: readonly string[], line: (text: string) => void): Promise<void> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [`--max-semi-space-size=${YOUNG}`, process.argv[1] ?? '', ...args], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    createInterface({ input: child.stdout }).on('line', line);
    child.on('error', reject);
    child.on('close', (code) =>
      code === 0 || code === 1 ? resolve() : reject(new BadUse(`a worker for ${args[0]} ended with exit ${code}`)),
    );
  });
