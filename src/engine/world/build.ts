/** Scenario to World: the one door between what is written and what runs. The Scenario has been checked; nobody checks again. */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import { toolKind } from '../catalogue/tools.ts';
import { seedFrom } from '../math/random.ts';
import type { Scenario, ScenarioEquipment, ScenarioFault, ScenarioPole } from '../scenario/types.ts';
import { armParts, besideParts, isArm } from './armParts.ts';
import { affected, changedBy, labelled } from './faultEffects.ts';
import { leaning, standsLeaning } from './lean.ts';
import { cableParts, lineParts, secondaryParts } from './lineParts.ts';
import { equipmentParts, framingParts, guyOut } from './poleParts.ts';
import { premisesParts } from './premisesParts.ts';
import { standsOf } from './stands.ts';
import { supplyParts } from './supplyParts.ts';
import type { LaidFault, Part, Person, Site, Tool, World } from './types.ts';

const byId = (a: { readonly id: string }, b: { readonly id: string }): number =>
  a.id < b.id ? -1 : a.id > b.id ? 1 : 0;

/** A transformer is rated for the system unless it says otherwise: phase volts, across two phases line volts. */
const ratedFor = ({ supply }: Scenario, item: ScenarioEquipment): ScenarioEquipment => {
  const { terminals, values } = componentKind(item.kind);
  if (values.primaryVolts === undefined) return item;
  const primaryVolts = terminals.includes('h2') ? supply.lineVolts : supply.phaseVolts;
  return { ...item, values: { primaryVolts, ...item.values } };
};

/** A delta has no neutral along the line. */
const onFraming = (scenario: Scenario, pole: ScenarioPole): readonly Part[] => {
  const parts = isArm(pole) ? armParts(scenario, pole) : framingParts(pole, guyOut(scenario, pole));
  return scenario.supply.delta ? parts.filter(({ kind }) => kind !== 'neutral-spool') : parts;
};

/** A part as other equipment of its pole makes it: a guy with an insulator told apart. */
const altered = (part: Part, { equipment }: Scenario): Part => {
  const words = equipment.flatMap(({ kind, pole }) => {
    const { alters } = componentKind(kind);
    return alters !== undefined && part.id === `${pole}.${alters.name}` ? Object.entries(alters.words) : [];
  });
  return words.length === 0 ? part : { ...part, words: { ...part.words, ...Object.fromEntries(words) } };
};

/** Every part before faults are laid, sorted by id. */
const bareParts = (scenario: Scenario): readonly Part[] => {
  const listed = new Set(scenario.equipment.map(({ id }) => id));
  const parts = [
    ...supplyParts(scenario),
    ...scenario.poles.flatMap((pole) => [
      ...onFraming(scenario, pole),
      ...scenario.equipment
        .filter((item) => item.pole === pole.id)
        .flatMap((item) => equipmentParts(pole, ratedFor(scenario, item), listed, guyOut(scenario, pole))),
    ]),
    ...besideParts(scenario),
    ...lineParts(scenario),
    ...secondaryParts(scenario),
    ...cableParts(scenario),
    ...scenario.premises.flatMap((premises) => {
      const pole = scenario.poles.find(({ id }) => id === premises.from);
      if (pole === undefined) throw new Error(`no pole ${premises.from}`);
      return premisesParts(premises, pole);
    }),
  ];
  return parts.map((part) => altered(part, scenario)).sort(byId);
};

/** Ids of the parts that a scenario's framing, equipment, spans and premises give, sorted. */
export const partIdsOf = (scenario: Scenario): readonly string[] => bareParts(scenario).map(({ id }) => id);

const laid = ({ id, kind, side, to, values, says }: ScenarioFault): LaidFault => ({
  id,
  kind,
  side: side ?? faultKind(kind).side ?? 'any',
  to: to ?? null,
  values: {
    ...Object.fromEntries(Object.entries(faultKind(kind).values).map(([name, entry]) => [name, entry.default])),
    ...values,
  },
  ...(says === undefined ? {} : { says }),
});

/** Those that lie there, sorted by id. */
const laidOn = (faults: readonly ScenarioFault[], on: string): readonly LaidFault[] =>
  faults
    .filter((fault) => fault.on === on)
    .map(laid)
    .sort(byId);

const layOn = (part: Part, faults: readonly ScenarioFault[]): Part => {
  const here = laidOn(faults, part.id);
  if (here.length === 0) return part;
  const sets = here.flatMap(({ kind }) => Object.entries(faultKind(kind).sets ?? {}));
  return { ...part, state: { ...part.state, ...Object.fromEntries(sets) }, faults: here };
};

const siteOf = ({ site }: Scenario, faults: readonly ScenarioFault[]): Site => {
  const here = laidOn(faults, 'site');
  const now = here.reduce<Site>(changedBy, { ...site, faults: here, thunderAt: null });
  return now.lightning === 'near' ? { ...now, thunderAt: 0 } : now;
};

const toolOf = (scenario: Scenario, faults: readonly ScenarioFault[]): readonly Tool[] => {
  const isAlone = ({ kind }: { kind: string }): boolean =>
    scenario.tools.filter((each) => each.kind === kind).length === 1;
  return scenario.tools
    .map((tool): Tool => {
      const kind = toolKind(tool.kind);
      const here = laidOn(faults, tool.id);
      const asLabelled = { ratedVolts: tool.ratedVolts ?? kind.ratedVolts ?? null, words: tool.words ?? {} };
      const { ratedVolts, words } = here.reduce(labelled, asLabelled);
      return {
        id: tool.id,
        kind: tool.kind,
        // A number tells it from its like; the only one of its kind needs none.
        name: isAlone(tool) ? kind.name : `${kind.name} ${tool.id.replace(/^.*-/, '')}`,
        ratedVolts,
        tested: tool.tested ?? null,
        wet: kind.barrier === 'stick' && scenario.site.wetness > 0,
        checks: {},
        faults: here,
        words: { ...(tool.note === undefined ? {} : { note: tool.note }), ...words },
      };
    })
    .sort(byId);
};

const qualifiedRoles: readonly Person['role'][] = ['trainee', 'second', 'foreman'];

const peopleOf = (scenario: Scenario, faults: readonly ScenarioFault[]): readonly Person[] => {
  const person = (more: Pick<Person, 'id' | 'role' | 'name'> & Partial<Person>): Person => ({
    at: null,
    arrivesAt: null,
    premises: null,
    wearing: [],
    says: {},
    aloftBy: null,
    qualified: qualifiedRoles.includes(more.role),
    task: null,
    faults: laidOn(faults, more.id),
    ...more,
  });
  const { call, crew, premises, people } = scenario;
  return [
    person({ id: 'trainee', role: 'trainee', name: 'you' }),
    person({ id: 'second', role: 'second', name: crew.secondName, arrivesAt: crew.secondMin }),
    person({ id: 'dispatcher', role: 'dispatcher', name: 'the dispatcher', says: call.dispatcher }),
    person({ id: 'caller', role: 'caller', name: call.from, says: call.caller }),
    ...premises.map(({ id, customer, says }) =>
      person({ id: `${id}.customer`, role: 'customer', name: customer, premises: id, at: `${id}.yard`, says }),
    ),
    ...people.map(({ at = null, ...who }) => person({ ...who, at })),
  ]
    .map((who) => who.faults.reduce(affected, who))
    .sort(byId);
};

/** The World at the moment the call comes in; `hash` is the scenario's, `seed` starts its chance. */
export const build = (scenario: Scenario, hash: string, seed = 1): World => {
  const faults = [...scenario.faults, ...scenario.lookAlikes];
  const { call, supply, crew, job, title, events, variant } = scenario;
  const parts = leaning(bareParts(scenario).map((part) => layOn(part, faults)));
  return {
    scenario: scenario.id,
    scenarioHash: hash,
    clock: { minute: 0 },
    site: siteOf(scenario, faults),
    truck: { at: [-60, -8, 0], place: 'arriving', engine: true },
    parts,
    stands: standsLeaning(standsOf(scenario), parts),
    people: peopleOf(scenario, faults),
    tools: toolOf(scenario, faults),
    jumpers: [],
    covers: [],
    guards: { chocks: false, cones: false, keepOut: false, barrier: false, truckGround: false },
    orders: { clearance: null, switching: [], reported: [], customersTold: [] },
    knowledge: { looks: [], heard: [], asked: [], readings: [], tests: [] },
    paper: { findings: [], plans: [], briefings: [] },
    chance: seedFrom(seed),
    given: { call, supply, crew, job, title, events, ...(variant === undefined ? {} : { variant }) },
    ended: null,
  };
};
