/** What can be perceived from a stand with an aid. Seeing is not diagnosing: words are neutral. */
export const aids = ['eyes', 'lamp', 'glass'] as const;
export type Aid = (typeof aids)[number];

/** A sign of a fault or look-alike as the engine judges it from here. */
export interface Sign {
  /** `<fault id>/<sign kind id>`. */
  readonly id: string;
  readonly fault: string;
  readonly part: string;
  readonly sense: 'see' | 'hear';
  readonly perceived: boolean;
  /** Margin: ≥ 1 perceived when looked at or listened for. */
  readonly margin: number;
  /** Why not: 'other side', 'hidden', 'too small', 'too dark', 'fog', 'masked'; of the last light is asked first, then air. */
  readonly why: string | null;
  readonly words: string;
  /** Where it is, metres. */
  readonly at: readonly [number, number, number];
}

/** What a look at a part tells, neutrally. */
export interface Look {
  readonly part: string;
  readonly name: string;
  /** One line a feature, same length and detail for healthy ones. */
  readonly lines: readonly string[];
  /** Ids of the signs made out. */
  readonly seen: readonly string[];
  readonly visible: boolean;
  readonly distance: number;
}

export interface Heard {
  readonly id: string;
  readonly sound: string;
  /** dB(A) at the ear. */
  readonly level: number;
  /** Direction in the horizontal plane, radians from +x toward +y; null from all round. */
  readonly azimuth: number | null;
  readonly at: readonly [number, number, number] | null;
  readonly caption: string;
  /** Null for ordinary sounds (birds, truck). */
  readonly fault: string | null;
}
