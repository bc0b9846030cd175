/** Steps that many jobs share. */
import type { JobStep } from '../types.ts';

const step = (id: string, words: string, ...shownBy: JobStep['shownBy']): JobStep => ({ id, words, shownBy });

export const survey: readonly JobStep[] = [
  step('report', 'Acknowledge, ask the dispatcher for the history and the circuit.', 'act:acknowledge'),
  step('look-round', 'Park clear of the fall line; look at everything from more than one side.', 'act:look'),
  step('keep-out', 'Keep everybody out from under the work.', 'precondition:barricaded'),
];

export const crewReady: readonly JobStep[] = [
  step('second', 'Wait for the second qualified worker.', 'precondition:second-qualified'),
  step('brief', 'Hold the briefing: all five subjects, everybody there.', 'precondition:briefed'),
];

export const makeDead: readonly JobStep[] = [
  step('open', 'Open what feeds it, see it open, lift the tube out.', 'operation:open', 'operation:remove-tube'),
  step('tag', 'Tag the open point and every source on the load side.', 'act:tag'),
  step('clearance', 'Get the clearance, read back device and circuit.', 'precondition:clearance'),
  step('test', 'Prove the detector, test, prove it again.', 'precondition:detector-proved'),
  step('ground', 'Put grounds on: neutral end first, line end by stick.', 'act:ground'),
];

export const reachWork: readonly JobStep[] = [
  step('pole', 'Look at the pole, sound it and prod it at the ground line.', 'precondition:pole-checked'),
  step('up', 'Go up attached, rescue made ready.', 'act:aloft'),
];

export const restore: readonly JobStep[] = [
  step('down', 'Come down; count tools and grounds.', 'act:come-down'),
  step('grounds-off', 'Take the grounds off: line end first.', 'act:unground'),
  step('clear', 'Call everyone clear and give the clearance back.', 'act:everyone-clear'),
  step('close', 'Close from the side, face turned, nobody beneath.', 'operation:close'),
  step('check', 'Measure at the customer’s side before leaving.', 'act:test'),
  step('close-out', 'Tell the dispatcher; close the call out.', 'act:close-out'),
];

/** The usual frame round the work itself. */
export const deadJob = (...work: readonly JobStep[]): readonly JobStep[] => [
  ...survey,
  ...crewReady,
  ...makeDead,
  ...reachWork,
  ...work,
  ...restore,
];

export const work = step;
