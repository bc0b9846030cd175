// RIFF WAVE, one channel, 16 bits, no extra chunks.

/** Bytes of a WAV file from samples within -1 and 1. */
export const wavFrom = ({ samples, rate }) => {
  const bytes = new Uint8Array(44 + samples.length * 2);
  const view = new DataView(bytes.buffer);
  const word = (at, text) => {
    for (let k = 0; k < text.length; k += 1) view.setUint8(at + k, text.charCodeAt(k));
  };
  word(0, 'RIFF');
  view.setUint32(4, bytes.length - 8, true);
  word(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, rate * 2, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  word(36, 'data');
  view.setUint32(40, samples.length * 2, true);
  for (let k = 0; k < samples.length; k += 1) {
    if (Math.abs(samples[k]) > 1) throw new Error(`sample ${k} is ${samples[k]}, beyond full scale`);
    view.setInt16(44 + 2 * k, Math.round(samples[k] * 32767), true);
  }
  return bytes;
};
