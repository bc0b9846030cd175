/** Sizes of a pole by length and class, from standards/poles.ts; a length that the table lacks gets its setting by rule of thumb. */
import { circumferenceAt, type PoleClass, poleClasses, poleDimensions } from '../standards/poles.ts';

export interface PoleSize {
  readonly topRadiusM: number;
  readonly buttRadiusM: number;
  readonly settingM: number;
}

/** Radii at roof and groundline and depth of setting, metres; 10 % of the length plus 2 ft (common practice) if not listed. */
export const poleSize = (lengthM: number, className: string): PoleSize => {
  const poleClass = poleClasses.find((each): each is PoleClass => String(each) === className);
  const found = poleClass === undefined ? undefined : poleDimensions(lengthM, poleClass);
  if (found === undefined) return { topRadiusM: 0.1, buttRadiusM: 0.14, settingM: 0.1 * lengthM + 0.61 };
  return {
    topRadiusM: found.topCircumference / (2 * Math.PI),
    buttRadiusM: circumferenceAt(found, 0) / (2 * Math.PI),
    settingM: found.setting,
  };
};
