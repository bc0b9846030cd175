/** The caution that stands on every debrief, print and start page. */
export const caution =
  'Training aid only. Your employer\u2019s rules, local codes and the qualified person on the spot decide; practice differs from place to place. A good score authorises nobody to work.';
