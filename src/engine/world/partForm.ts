/** Makes a Part of a kind with the kind's defaults filled in. */
import { componentKind } from '../catalogue/components.ts';
import type { Vec3 } from '../math/vec3.ts';
import type { Part } from './types.ts';

/** What must be said of a part; the rest comes from its kind. */
export interface PartSpec {
  readonly id: string;
  readonly kind: string;
  /** Pole or premises that owns it, before the dot of its id. */
  readonly owner: { readonly pole: string } | { readonly premises: string } | null;
  readonly where: string;
  readonly at: Vec3;
  readonly end?: Vec3;
  readonly azimuth?: number;
  readonly nets?: Readonly<Record<string, string>>;
  readonly state?: Readonly<Record<string, string>>;
  readonly values?: Readonly<Record<string, number>>;
  readonly words?: Readonly<Record<string, string>>;
}

const scopeOf = ({ owner, id }: PartSpec): string => {
  if (owner === null) return id;
  return 'pole' in owner ? owner.pole : owner.premises;
};

/** A net as declared: '$id.x' is the part's own, 'p1.main' is meant as it stands, 'main' is the owner's. */
const netNamed = (net: string, spec: PartSpec): string => {
  if (net.startsWith('$id.')) return `${spec.id}.${net.slice(4)}`;
  return net.includes('.') || net === 'earth' ? net : `${scopeOf(spec)}.${net}`;
};

/** The part with defaults, nets by name, nothing laid on it. */
export const partForm = (spec: PartSpec): Part => {
  const kind = componentKind(spec.kind);
  const defaults = <T>(declared: Readonly<Record<string, { readonly default: T }>>): Record<string, T> =>
    Object.fromEntries(Object.entries(declared).map(([name, entry]) => [name, entry.default]));
  return {
    id: spec.id,
    kind: spec.kind,
    // A pole is called by its number alone: 'pole QR-14', not 'pole, pole QR-14'.
    name: spec.where.startsWith(`${kind.name} `) ? spec.where : `${kind.name}, ${spec.where}`,
    pole: spec.owner !== null && 'pole' in spec.owner ? spec.owner.pole : null,
    premises: spec.owner !== null && 'premises' in spec.owner ? spec.owner.premises : null,
    at: spec.at,
    end: spec.end ?? null,
    azimuth: spec.azimuth ?? 0,
    nets: Object.fromEntries(
      kind.terminals.map((terminal) => [
        terminal,
        netNamed(spec.nets?.[terminal] ?? kind.nets[terminal] ?? `$id.${terminal}`, spec),
      ]),
    ),
    state: {
      ...Object.fromEntries(Object.entries(kind.states).map(([name, positions]) => [name, positions[0] ?? ''])),
      ...spec.state,
    },
    values: { ...defaults(kind.values), ...spec.values },
    words: { ...defaults(kind.words), ...spec.words },
    faults: [],
    tags: [],
    supported: false,
  };
};
