// Reads the 16-bit mono WAV files the way any player would: by the header's own figures.
export interface Wav {
  readonly rate: number;
  readonly samples: Float64Array;
}

export const readWav = (bytes: Uint8Array): Wav => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const word = (at: number): string => String.fromCharCode(...bytes.subarray(at, at + 4));
  if (word(0) !== 'RIFF' || word(8) !== 'WAVE' || word(36) !== 'data') throw new Error('not a plain WAV file');
  if (view.getUint16(22, true) !== 1 || view.getUint16(34, true) !== 16) throw new Error('not 16-bit mono');
  const count = view.getUint32(40, true) / 2;
  if (44 + 2 * count !== bytes.length) throw new Error('data is shorter or longer than its header says');
  const samples = new Float64Array(count);
  for (let k = 0; k < count; k += 1) samples[k] = view.getInt16(44 + 2 * k, true) / 32767;
  return { rate: view.getUint32(24, true), samples };
};

/** Power at each whole hertz from `low` to `high`, over the first second (so every whole hertz fits exactly). */
export const linesOf = ({ rate, samples }: Wav, low: number, high: number): { hertz: number; power: number }[] => {
  const lines = [];
  for (let hertz = low; hertz <= high; hertz += 1) {
    const turn = 2 * Math.cos((2 * Math.PI * hertz) / rate);
    let [a, b] = [0, 0];
    for (let k = 0; k < rate; k += 1) [a, b] = [(samples[k] ?? 0) + turn * a - b, a];
    lines.push({ hertz, power: a * a + b * b - turn * a * b });
  }
  return lines.sort((x, y) => y.power - x.power);
};
