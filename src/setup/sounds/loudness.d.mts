/** Loudest A-weighted RMS in any 125 ms; a full-scale 1 kHz sine gives 0.707. */
export declare const loudestA: (tape: { readonly samples: Float64Array; readonly rate: number }) => number;
