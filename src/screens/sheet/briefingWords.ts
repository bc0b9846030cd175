/** Words of a job briefing, on the screen and on paper. */
import type { Mechanism } from '../../engine/catalogue/types.ts';

/** What a hazard can do, in plain words. */
export const harmWords: Readonly<Record<Mechanism, string>> = {
  contact: 'current through the body',
  approach: 'a flash to whoever comes too near',
  flash: 'an electric arc',
  step: 'a voltage across the ground, foot to foot',
  drop: 'a conductor or part coming down',
  fall: 'a fall from height',
  'struck-by': 'something that moves or swings',
  lightning: 'lightning',
  'barrier-loss': 'a tool or glove that does not hold',
};
