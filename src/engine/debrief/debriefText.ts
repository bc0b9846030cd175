/** A debrief as plain text, for the command line and for print. */
import { clockFrom } from './clock.ts';
import { sameSigns, signLine } from './hazardCards.ts';
import { laneWords } from './orderPicture.ts';
import type { Debrief } from './types.ts';
import { capital } from './words.ts';

const section = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : ['', title.toUpperCase(), ...lines];

/** Lines of at most one sentence each, ending with the caution. */
export const debriefText = (debrief: Debrief): string =>
  [
    `${debrief.title}: ${debrief.verdictWords}`,
    ...debrief.reasons,
    ...section('What you did well', debrief.didWell),
    ...section('Take along', [debrief.takeAlong]),
    ...section(
      'Hazards',
      debrief.hazards.flatMap(({ title, part, found, when, places, wouldDo, controls }) => [
        `${found ? '[found] ' : '[missed]'} ${capital(title)} (${part}). ${when}`,
        ...wouldDo.map((line) => `    ${line}`),
        ...(found ? [] : sameSigns(places).map((same) => `    ${signLine(same)}`)),
        ...controls.map((line) => `    ${line}`),
      ]),
    ),
    ...section(
      'Exposures',
      debrief.exposures.flatMap(({ minute, severity, title, lines }) => [
        `From ${clockFrom(debrief.order.call, minute)}, ${severity}: ${title}.`,
        ...lines.map((line) => `    ${line}`),
      ]),
    ),
    ...section('What only looked wrong', debrief.lookAlikes),
    ...section('Job briefing', debrief.briefing),
    ...section('The job, step by step', debrief.job),
    ...section(
      'Order',
      debrief.order.lanes.map((lane) => laneWords(lane, debrief.order.call)),
    ),
    ...section(
      'Five parts',
      debrief.parts.flatMap(({ name, value, says }) => [
        `${capital(name)}: ${value === null ? 'nothing to judge' : `${Math.round(value * 100)} of 100`}`,
        ...says.map((line) => `    ${line}`),
      ]),
    ),
    ...section(
      'Timeline',
      debrief.timeline.map(({ minute, words }) => `${clockFrom(debrief.order.call, minute)}  ${words}`),
    ),
    ...section(
      'Numbers',
      debrief.numbers.flatMap(({ part, lines }) => [capital(part), ...lines.map((line) => `    ${line}`)]),
    ),
    '',
    debrief.judgedBy,
    debrief.caution,
    '',
  ].join('\n');
