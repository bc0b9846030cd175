/** Words of a job briefing, on the screen and on paper. */
import type { briefingTopics } from '../../engine/catalogue/controls.ts';
import type { Mechanism } from '../../engine/catalogue/types.ts';

/** The five subjects, 29 CFR 1910.269(c)(2), in words. */
export const topicWords: Readonly<Record<(typeof briefingTopics)[number], string>> = {
  hazards: 'Hazards of the job',
  procedures: 'Work procedures involved',
  precautions: 'Special precautions',
  'energy-controls': 'Energy source controls',
  'protective-equipment': 'Protective equipment',
};

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
