/** What stands on the sheet under each of the five subjects of a briefing: findings, and the controls planned against them. */
import { condition } from '../catalogue/conditions.ts';
import { type briefingTopics, controlKind } from '../catalogue/controls.ts';
import type { World } from '../world/types.ts';
import { capital, nameOf } from './words.ts';

export type Subject = (typeof briefingTopics)[number];

export const subjectWords: Readonly<Record<Subject, string>> = {
  hazards: 'Hazards of the job',
  procedures: 'Work procedures involved',
  precautions: 'Special precautions',
  'energy-controls': 'Energy source controls',
  'protective-equipment': 'Protective equipment',
};

/** Lines of each subject, each once, in the order in which they were written. */
export const underSubjects = (world: World): Readonly<Record<Subject, readonly string[]>> => {
  const { findings, plans } = world.paper;
  const linesOf = (subject: Subject): readonly string[] =>
    subject === 'hazards'
      ? findings.map(({ on, condition: what }) => `${capital(nameOf(world, on))}: ${condition(what).label}`)
      : plans
          .map(({ control }) => controlKind(control))
          .filter((control) => control.subject === subject)
          .map(({ name }) => name);
  const once = (subject: Subject): readonly string[] => [...new Set(linesOf(subject))];
  return {
    hazards: once('hazards'),
    procedures: once('procedures'),
    precautions: once('precautions'),
    'energy-controls': once('energy-controls'),
    'protective-equipment': once('protective-equipment'),
  };
};
