/** Small turns of phrase that several sheets share. */

import type { WorldEvent } from '../engine/acts/types.ts';
import { componentKind } from '../engine/catalogue/components.ts';
import {
  conditions,
  conditionsFor,
  personConditions,
  siteConditions,
  toolConditions,
} from '../engine/catalogue/conditions.ts';
import type { ConditionKind } from '../engine/catalogue/types.ts';
import { findPart, personById, toolById } from '../engine/world/edit.ts';
import type { World } from '../engine/world/types.ts';

export const capital = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1);

export { clockAt } from '../engine/debrief/clock.ts';

const others: Readonly<Record<string, string>> = {
  site: 'weather and site',
  ticket: 'the ticket',
  guards: 'cones, chocks and tape',
  truck: 'the truck',
};

/** What a thing is called that may be pointed at. */
export const nameOf = (world: World, id: string): string =>
  findPart(world, id)?.name ?? toolById(world, id)?.name ?? personById(world, id)?.name ?? others[id] ?? id;

/** What a part is called where its pole or premises is said already: the name before its last comma. */
export const shortName = (world: World, id: string): string => {
  const part = findPart(world, id);
  if (part === null || (part.pole === null && part.premises === null)) return nameOf(world, id);
  const comma = part.name.lastIndexOf(', ');
  return comma > 0 ? part.name.slice(0, comma) : part.name;
};

/** Who or what an event comes from, where its words do not say. */
export const speakerOf = (world: World, { event, on }: Pick<WorldEvent, 'event' | 'on'>, words: string): string => {
  if (on === null || (event !== 'said' && event !== 'seen')) return '';
  const name = nameOf(world, on);
  return name === on || words.toLowerCase().startsWith(name.toLowerCase()) ? '' : `${capital(name)}: `;
};

/** Everything that a finding may be called on, parts first. */
export const callables = (world: World): readonly { readonly id: string; readonly label: string }[] => [
  ...world.parts
    .filter(({ kind }) => componentKind(kind).conditions.length > 0)
    .map(({ id }) => ({ id, label: nameOf(world, id) })),
  ...world.tools.map(({ id, name }) => ({ id, label: name })),
  ...world.people.filter(({ role }) => role !== 'trainee').map(({ id, name }) => ({ id, label: name })),
  ...['guards', 'ticket', 'site'].map((id) => ({ id, label: others[id] ?? id })),
];

/** What is called on a tool, somebody, the site; on the ticket or the guards anything may be. */
const around = (world: World, id: string): readonly string[] => {
  if (toolById(world, id) !== null) return toolConditions;
  if (personById(world, id) !== null) return personConditions;
  return id === 'site' ? siteConditions : conditions.map((each) => each.id);
};

/** The trade's list for such a thing; anything may also be missing. */
export const conditionsOn = (world: World, id: string): readonly ConditionKind[] => {
  const part = findPart(world, id);
  const allowed = part === null ? around(world, id) : conditionsFor(part.kind).map((each) => each.id);
  return conditions.filter((each) => each.id === 'missing' || allowed.includes(each.id));
};

/** How a condition is called. */
export const conditionLabel = (id: string): string => conditions.find((each) => each.id === id)?.label ?? id;
