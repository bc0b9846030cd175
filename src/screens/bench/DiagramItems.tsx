/** Bars, devices and spans of the drawing, each a button that says in words what it shows. */
import { EARTH } from '../../engine/network/types.ts';
import { amperesIn, type Bench, isClosed, otherWay, readBus } from './bench.ts';
import { ampsOf, busName, edgeName, groupMark, liveWords, stateWords, touchOf, voltsOf } from './benchWords.ts';
import { type PlacedBus, type PlacedEdge, type Sheet, type as typeface } from './layout.ts';
import { Earth, SymbolOf } from './symbols.tsx';

export interface DiagramProps {
  readonly bench: Bench;
  readonly sheet: Sheet;
  /** Sources in the order of their marks. */
  readonly groups: readonly string[];
  /** Bus or edge that is chosen. */
  readonly chosen: string | null;
  readonly onBus: (id: string) => void;
  readonly onEdge: (id: string) => void;
}

/** From the middle of the high winding to that of the low one. */
const CORE = 22;

const legsWords = ({ legs, worst }: ReturnType<typeof readBus>): string => {
  const volts = legs.map((leg) => leg.volts);
  const [least, most] = [Math.min(...volts), Math.max(...volts)];
  return legs.length > 1 && most > 1 && least < 0.98 * most
    ? volts.map((v) => voltsOf(v).replace(' V', '')).join('/')
    : voltsOf(worst.volts);
};

export const BusItem = ({ props, placed, tab }: { props: DiagramProps; placed: PlacedBus; tab: object }) => {
  const { bench, groups, chosen, onBus } = props;
  const { bus, x1, x2, y, labelX, dots, onTo } = placed;
  const reading = readBus(bench, bus);
  const { worst } = reading;
  const live = worst.live;
  const marks = worst.sources.map((group) => groupMark(groups, group)).join('+');
  const held = live ? `live ${marks}` : liveWords(worst);
  const flags = bench.world.jumpers.flatMap(({ points }, at) =>
    points.some((point) => bus.points.includes(point)) ? [at + 1] : [],
  );
  const name = `${[legsWords(reading), held, ...flags].join(' ')}: ${busName(bench.world, bus)}, a touch draws ${ampsOf(worst.throughKilohm)}, ${touchOf(worst).words}`;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button inside a drawing cannot be an HTML one
    <g
      class={`bus${live ? ' live' : ''}${chosen === bus.id ? ' chosen' : ''}`}
      role="button"
      aria-label={name}
      aria-pressed={chosen === bus.id}
      data-bus={bus.id}
      onClick={() => onBus(bus.id)}
      {...tab}
    >
      <rect class="hit" x={labelX - 7} y={y - 14} width={58} height={28} />
      <path class="bar" d={`M${x1} ${y}H${x2}`} />
      {live && <path class="thread" d={`M${x1} ${y}H${x2}`} />}
      {dots.map((x) => (
        <circle key={x} class="dot" cx={x} cy={y} r={3} />
      ))}
      <text class="volts" x={labelX} y={y - 4.5}>
        {legsWords(reading)}{' '}
      </text>
      {onTo.length > 0 && (
        <path
          class="onward"
          d={`M${labelX + legsWords(reading).length * typeface.letter + 3} ${y - 13}l7 4.5l-7 4.5Z`}
        />
      )}
      <text class="held" x={labelX} y={y + 12}>
        {held}{' '}
      </text>
      {flags.map((flag, at) => (
        <g key={flag} class="flag" transform={`translate(${labelX - 20} ${y + at * 17})`}>
          <circle r="7.5" />
          <text y="4" text-anchor="middle">
            {flag}
          </text>
        </g>
      ))}
    </g>
  );
};

const Wire = ({ live, d }: { live: boolean; d: string }) => (
  <>
    <path class={live ? 'wire live' : 'wire'} d={d} />
    {live && <path class="thread" d={d} />}
  </>
);

/** The words beside a symbol, as it stands. */
const linesFor = (
  bench: Bench,
  { edge, lines }: PlacedEdge,
  now: { readonly closed: boolean; readonly state: string; readonly gone: boolean; readonly amps: number },
): readonly string[] => {
  if (edge.symbol === 'primary') return [];
  if (edge.symbol === 'secondary') {
    const high = { ...edge, windings: [0] };
    return [...lines, `high ${ampsOf(amperesIn(bench, high))}`, `low ${ampsOf(now.amps)}`];
  }
  const silent = now.gone || (!now.closed && edge.symbol === 'gap');
  return [...lines, ...(now.state === '' ? [] : [now.state]), ...(silent ? [] : [ampsOf(now.amps)])];
};

/** A vertical's own run, or for a low side the way over to the core and back. */
const runsOf = ({ x, y1, y2, symbolY, coreX, lower }: PlacedEdge): readonly [string, string | null] => {
  const at = coreX === null ? '' : `H${coreX + CORE}`;
  const back = coreX === null ? `M${x} ${symbolY + 18}V${y2}` : `M${coreX + CORE} ${symbolY + 18}H${x}V${y2}`;
  return [`M${x} ${y1}V${symbolY - 18}${at}`, lower === EARTH ? null : back];
};

export const EdgeItem = ({
  props,
  placed,
  tab,
  isLive,
}: {
  props: DiagramProps;
  placed: PlacedEdge;
  tab: object;
  isLive: (bus: string) => boolean;
}) => {
  const { bench, chosen, onEdge } = props;
  const { edge, upper, lower, x, symbolY, hops, coreX } = placed;
  const closed = isClosed(bench.world, edge);
  const amps = amperesIn(bench, edge);
  const state = stateWords(bench.world, edge, closed);
  const acts = otherWay(bench.world, edge) !== null;
  const gone = edge.symbol === 'leak' && !closed;
  const lines = linesFor(bench, placed, { closed, state, gone, amps });
  const label = [
    `${lines.join(' ')}: ${edgeName(bench.world, edge)}`.replace(/^: /, ''),
    edge.symbol === 'electrode' ? 'to earth' : '',
    edge.symbol === 'gap' && !closed ? 'no current' : '',
  ];
  const top = symbolY - ((lines.length - 1) * typeface.line) / 2 + 4;
  const [down, up] = runsOf(placed);
  const lit = { top: isLive(upper), bottom: lower !== EARTH && isLive(lower) };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button inside a drawing cannot be an HTML one
    <g
      class={`edge${acts ? ' acts' : ''}${chosen === edge.id ? ' chosen' : ''}${edge.fault !== null ? ' fault' : ''}${closed ? '' : ' off'}`}
      role="button"
      aria-label={label.filter((each) => each !== '').join(', ')}
      aria-pressed={acts ? closed : chosen === edge.id}
      data-edge={edge.id}
      data-part={edge.part}
      onClick={() => onEdge(edge.id)}
      {...tab}
    >
      <rect class="hit" x={x - 16} y={symbolY - 21} width={78} height={42} />
      {!gone && (
        <>
          {hops.map((y) => (
            <path key={y} class="hop" d={`M${x} ${y - 6}V${y + 6}`} />
          ))}
          <Wire live={lit.top} d={down} />
          {up !== null && <Wire live={lit.bottom} d={up} />}
          <g
            class={lit.top || lit.bottom ? 'symbol live' : 'symbol'}
            transform={`translate(${coreX === null ? x : coreX + CORE} ${symbolY})`}
          >
            <SymbolOf name={edge.symbol} closed={closed} />
            {edge.symbol === 'primary' && <path class="core" d="M9.5 -16V16M12.5 -16V16" />}
            {lower === EARTH && (
              <g transform="translate(0 14)">
                <Earth />
              </g>
            )}
          </g>
        </>
      )}
      <text class="words">
        {lines.map((line, at) => (
          <tspan
            key={`${at} ${line}`}
            class={line === state ? 'state' : undefined}
            x={x + 16}
            y={top + at * typeface.line}
          >
            {line}{' '}
          </tspan>
        ))}
      </text>
    </g>
  );
};

export const SpanItem = ({
  props,
  placed,
  tab,
  isLive,
}: {
  props: DiagramProps;
  placed: PlacedEdge;
  tab: object;
  isLive: (bus: string) => boolean;
}) => {
  const { bench, chosen, onEdge } = props;
  const { edge, upper, x, x2, y1, symbolY } = placed;
  const amps = ampsOf(amperesIn(bench, edge));
  const live = isLive(upper);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button inside a drawing cannot be an HTML one
    <g
      class={`edge span${chosen === edge.id ? ' chosen' : ''}`}
      role="button"
      aria-label={`span ${amps}: ${edgeName(bench.world, edge)}`}
      aria-pressed={chosen === edge.id}
      data-edge={edge.id}
      data-part={edge.part}
      onClick={() => onEdge(edge.id)}
      {...tab}
    >
      <rect class="hit" x={symbolY} y={y1 - 15} width={62} height={30} />
      <Wire live={live} d={`M${x} ${y1}H${x2 ?? x}`} />
      <text class="words">
        <tspan x={symbolY + 4} y={y1 - 5}>
          span{' '}
        </tspan>
        <tspan x={symbolY + 4} y={y1 + 13}>
          {amps}
        </tspan>
      </text>
    </g>
  );
};
