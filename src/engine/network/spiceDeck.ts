/**
 * Writes a network as an ngspice deck (AC analysis at one frequency), element for element the same circuit: series R and
 * L or C for an impedance, parallel ones for an admittance, a core as voltage-controlled sources on its windings and
 * current-controlled ones that sum the ampere-turns at a node whose voltage is the one induced in winding 0.
 */
import { abs, arg, type Complex } from '../math/complex.ts';
import { spiceElement, spiceNode } from './spiceNames.ts';
import { EARTH, type NetworkElement, type SourceElement, type TransformerElement } from './types.ts';

export interface DeckOptions {
  readonly title: string;
  /** Angular frequency at which impedances and admittances were taken, rad/s. */
  readonly omega: number;
  /** Turn of each synchronism group in radians; zero where not named. */
  readonly angles?: Readonly<Record<string, number>>;
  /** Adds a control block that prints every node voltage, for `ngspice -b`. */
  readonly print?: boolean;
}

function writeSeries(id: string, role: string, from: string, to: string, z: Complex, omega: number): string[] {
  const reactive = (a: string, b: string): string =>
    z.im > 0
      ? `${spiceElement('L', role, id)} ${a} ${b} ${z.im / omega}`
      : `${spiceElement('C', role, id)} ${a} ${b} ${-1 / (z.im * omega)}`;
  const resistive = (a: string, b: string): string => `${spiceElement('R', role, id)} ${a} ${b} ${z.re}`;
  if (z.re === 0 && z.im === 0) return [`${spiceElement('V', `${role}z`, id)} ${from} ${to} DC 0`];
  if (z.im === 0) return [resistive(from, to)];
  if (z.re === 0) return [reactive(from, to)];
  const middle = spiceElement('m', role, id);
  return [resistive(from, middle), reactive(middle, to)];
}

function writeParallel(id: string, role: string, from: string, to: string, y: Complex, omega: number): string[] {
  const lines: string[] = [];
  if (y.re !== 0) lines.push(`${spiceElement('R', role, id)} ${from} ${to} ${1 / y.re}`);
  if (y.im > 0) lines.push(`${spiceElement('C', role, id)} ${from} ${to} ${y.im / omega}`);
  if (y.im < 0) lines.push(`${spiceElement('L', role, id)} ${from} ${to} ${-1 / (y.im * omega)}`);
  return lines;
}

function writeSource(element: SourceElement, from: string, to: string, options: DeckOptions): string[] {
  const { id, emf, z, group } = element;
  const degrees = ((arg(emf) + (options.angles?.[group] ?? 0)) * 180) / Math.PI;
  const inner = spiceElement('e', 's', id);
  const behind = z.re === 0 && z.im === 0 ? from : inner;
  const lines = [`${spiceElement('V', 's', id)} ${behind} ${to} DC 0 AC ${abs(emf)} ${degrees}`];
  return behind === from ? lines : [...lines, ...writeSeries(id, 'z', from, inner, z, options.omega)];
}

function writeTransformer(element: TransformerElement, options: DeckOptions): string[] {
  const { id, windings, magnetising } = element;
  const core = spiceElement('c', 'o', id);
  const base = windings[0]?.turns ?? 1;
  const lines: string[] = [];
  for (const [w, { from, to, turns, z }] of windings.entries()) {
    const sensed = spiceElement('a', `${w}`, id);
    const induced = spiceElement('b', `${w}`, id);
    const sense = spiceElement('V', `w${w}`, id);
    lines.push(`${sense} ${spiceNode(from)} ${sensed} DC 0`);
    lines.push(...writeSeries(id, `w${w}`, sensed, induced, z, options.omega));
    lines.push(`${spiceElement('E', `w${w}`, id)} ${induced} ${spiceNode(to)} ${core} 0 ${turns / base}`);
    lines.push(`${spiceElement('F', `w${w}`, id)} 0 ${core} ${sense} ${turns / base}`);
  }
  return magnetising === undefined
    ? lines
    : [...lines, ...writeParallel(id, 'm', core, '0', magnetising, options.omega)];
}

function writeElement(element: NetworkElement, options: DeckOptions): string[] {
  if (element.kind === 'transformer') return writeTransformer(element, options);
  const from = spiceNode(element.from);
  const to = spiceNode(element.to);
  if (element.kind === 'source') return writeSource(element, from, to, options);
  return element.kind === 'impedance'
    ? writeSeries(element.id, 'z', from, to, element.z, options.omega)
    : writeParallel(element.id, 'y', from, to, element.y, options.omega);
}

const plain = (text: string): string => text.replace(/[^\x20-\x7e]/g, '?');
const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The deck as text, the same for any order of the elements. */
export function spiceDeck(elements: readonly NetworkElement[], options: DeckOptions): string {
  const hertz = Number((options.omega / (2 * Math.PI)).toPrecision(12));
  const sorted = elements.slice().sort((a, b) => byCodeUnit(a.id, b.id));
  const nodes = new Set<string>();
  for (const element of sorted) {
    const branches = element.kind === 'transformer' ? element.windings : [element];
    for (const { from, to } of branches) nodes.add(from).add(to);
  }
  nodes.delete(EARTH);
  const named = [...nodes].sort(byCodeUnit);
  const lines = [plain(options.title), '* node 0 is earth'];
  for (const node of named) lines.push(`* node ${spiceNode(node)} is ${plain(node)}`);
  for (const element of sorted) lines.push(`* ${element.kind} ${plain(element.id)}`, ...writeElement(element, options));
  lines.push('.options noopac', `.ac lin 1 ${hertz} ${hertz}`);
  if (options.print === true) {
    lines.push('.control', 'set numdgt=12', 'run');
    for (const node of named) lines.push(`print v(${spiceNode(node)})`);
    lines.push('quit', '.endc');
  }
  lines.push('.end');
  return `${lines.join('\n')}\n`;
}
