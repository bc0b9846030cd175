/** Root mean square to full scale that every sound's loudest 125 ms comes to. */
export declare const LOUDNESS: number;
/** No sample goes beyond this. */
export declare const PEAK: number;
/** name, seconds, samples a second, loop, who draws it. */
export declare const sounds: [
  string,
  number,
  number,
  boolean,
  (tape: { rate: number; loop: boolean; samples: Float64Array }, chance: () => number) => void,
][];
/** File name to bytes, for every sound. */
export declare const makeSounds: () => Map<string, Uint8Array>;
