/** What a fault makes of a tool, a person or the site, and what they are without it. Parts: build.ts and edit.ts. */
import { faultKind } from '../catalogue/faults.ts';
import { toolKind } from '../catalogue/tools.ts';
import type { LaidFault, Person, Site, Tool } from './types.ts';

type Label = Pick<Tool, 'ratedVolts' | 'words'>;

/** The label of a tool with a fault: another rating, a smaller cable. */
export function labelled<T extends Label>(tool: T, { kind, values }: LaidFault): T {
  const { rated, cable } = faultKind(kind).tool ?? {};
  const volts = rated === undefined ? undefined : values[rated];
  return {
    ...tool,
    ...(volts === undefined ? {} : { ratedVolts: volts }),
    ...(cable === undefined ? {} : { words: { ...tool.words, cable } }),
  };
}

/** The label of a tool whose fault is gone: the kind's own. */
export function labelledAgain(tool: Tool, { kind }: LaidFault): Tool {
  const { rated, cable } = faultKind(kind).tool ?? {};
  const { ratedVolts = null } = toolKind(tool.kind);
  const { cable: _, ...words } = tool.words;
  return { ...tool, ...(rated === undefined ? {} : { ratedVolts }), ...(cable === undefined ? {} : { words }) };
}

/** Somebody with a fault: not trained, not coming. */
export function affected(person: Person, { kind }: LaidFault): Person {
  const { unqualified, absent } = faultKind(kind).person ?? {};
  return {
    ...person,
    ...(unqualified ? { qualified: false } : {}),
    ...(absent ? { at: null, arrivesAt: null } : {}),
  };
}

/** The site with a fault. */
export function changedBy(site: Site, { kind, values }: LaidFault): Site {
  const sets = Object.entries(faultKind(kind).site ?? {}).map(([name, to]) => [
    name,
    typeof to === 'string' && to.startsWith('=') ? values[to.slice(1)] : to,
  ]);
  return sets.length === 0 ? site : { ...site, ...Object.fromEntries(sets) };
}

const calm: Partial<Site> = {
  windMs: 0,
  precipitation: 'none',
  lightning: 'none',
  flooded: false,
  traffic: 'none',
};

/** The site as it would be without a fault: what that had set is calm. */
export function calmedFrom(site: Site, { id, kind }: LaidFault): Site {
  const set = Object.keys(faultKind(kind).site ?? {});
  const back = Object.fromEntries(Object.entries(calm).filter(([name]) => set.includes(name)));
  const thunder = set.includes('lightning') ? { thunderAt: null } : {};
  return { ...site, ...back, ...thunder, faults: site.faults.filter((fault) => fault.id !== id) };
}
