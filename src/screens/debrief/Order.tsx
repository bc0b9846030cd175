/** Exposures against knowledge: a lane a cause over the minutes of the drill, drawn as SVG and saved as PNG. */
import { useRef } from 'preact/hooks';
import { clockFrom } from '../../engine/debrief/clock.ts';
import { laneWords } from '../../engine/debrief/orderPicture.ts';
import type { OrderLane, OrderPicture } from '../../engine/debrief/types.ts';
import { savePng } from './savePng.ts';

const ink = '#1b1e24';
const soft = '#4d5159';
const carbon = '#1d3a7a';
const red = '#b8141c';
const paper = '#fffdf6';
const font = 'Public Sans, system-ui, sans-serif';

interface Frame {
  readonly width: number;
  readonly left: number;
  readonly lane: number;
  readonly above: boolean;
}

const wide: Frame = { width: 940, left: 330, lane: 34, above: false };
const narrow: Frame = { width: 360, left: 10, lane: 54, above: true };
const top = 34;
const foot = 58;

const Diamond = ({ x, y, fill }: { x: number; y: number; fill: string }) => (
  <path d={`M${x} ${y - 7}L${x + 7} ${y}L${x} ${y + 7}L${x - 7} ${y}Z`} fill={fill} stroke={red} stroke-width={2} />
);

const Seen = ({ x, y }: { x: number; y: number }) => (
  <circle cx={x} cy={y} r={5.5} fill={paper} stroke={carbon} stroke-width={2} />
);
const Called = ({ x, y }: { x: number; y: number }) => (
  <rect x={x - 5} y={y - 5} width={10} height={10} fill={carbon} />
);
const Met = ({ x, y, known }: { x: number; y: number; known: boolean }) => (
  <path
    d={`M${x} ${y - 9}V${y + 9}`}
    stroke={known ? ink : red}
    stroke-width={known ? 3 : 4}
    stroke-dasharray={known ? undefined : '3 2'}
  />
);

const cut = (words: string, most: number): string => (words.length > most ? `${words.slice(0, most - 1)}…` : words);

const Lane = ({ lane, y, x, frame }: { lane: OrderLane; y: number; x: (minute: number) => number; frame: Frame }) => {
  const end = frame.width - 16;
  const halo = { 'paint-order': 'stroke', stroke: paper, 'stroke-width': 4 };
  return (
    <g>
      <text x={frame.above ? frame.left : 8} y={frame.above ? y - 22 : y - 2} font-size={12.5} fill={ink} {...halo}>
        {cut(lane.title, frame.above ? 54 : 50)}
      </text>
      <text x={frame.above ? frame.left : 8} y={frame.above ? y - 9 : y + 11} font-size={10.5} fill={soft} {...halo}>
        {cut(lane.part, 58)}
      </text>
      <path d={`M${frame.left} ${y}H${end}`} stroke="#c6cfdf" stroke-width={1} />
      {lane.perceived !== null && (
        <path d={`M${x(lane.perceived)} ${y}H${end}`} stroke={carbon} stroke-width={3} opacity={0.35} />
      )}
      {lane.perceived !== null && <Seen x={x(lane.perceived)} y={y} />}
      {lane.called !== null && <Called x={x(lane.called)} y={y} />}
      {lane.met !== null && <Met x={x(lane.met)} y={y} known={lane.known} />}
      {lane.exposures.map(({ minute, fatal }, index) => (
        <Diamond key={index} x={x(minute)} y={y} fill={fatal ? red : paper} />
      ))}
    </g>
  );
};

const legend = [
  ['sign perceived', (x: number, y: number) => <Seen x={x} y={y} />],
  ['called', (x: number, y: number) => <Called x={x} y={y} />],
  ['work came near, known', (x: number, y: number) => <Met x={x} y={y} known />],
  ['work came near, not known', (x: number, y: number) => <Met x={x} y={y} known={false} />],
  ['exposure', (x: number, y: number) => <Diamond x={x} y={y} fill={paper} />],
  ['could have been fatal', (x: number, y: number) => <Diamond x={x} y={y} fill={red} />],
] as const;

const Picture = ({ order, frame, title }: { order: OrderPicture; frame: Frame; title: string }) => {
  const columns = frame.above ? 2 : 3;
  const height = top + order.lanes.length * frame.lane + (frame.above ? 14 : 0) + foot + (frame.above ? 20 : 0);
  const x = (minute: number): number =>
    frame.left + 8 + ((frame.width - frame.left - 32) * Math.min(minute, order.minutes)) / order.minutes;
  const bottom = height - foot - (frame.above ? 20 : 0);
  const laneY = (at: number): number => top + (at + 0.5) * frame.lane + (frame.above ? 14 : 0);
  return (
    <svg
      class={frame.above ? 'order-narrow' : 'order-wide'}
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${frame.width} ${height}`}
      width={frame.width}
      height={height}
      font-family={font}
      role="img"
      aria-label={`${title}: exposures against knowledge. The same in words stands below.`}
    >
      <rect width={frame.width} height={height} fill={paper} />
      <text x={frame.left} y={16} font-size={12} fill={soft}>
        {clockFrom(order.call, 0)}
      </text>
      <text x={frame.width - 16} y={16} font-size={12} fill={soft} text-anchor="end">
        {clockFrom(order.call, order.minutes)}
      </text>
      {order.briefings.map((minute) => (
        <path key={minute} d={`M${x(minute)} ${top - 6}V${bottom}`} stroke={soft} stroke-dasharray="2 4" />
      ))}
      {order.handsOn !== null && (
        <>
          <path d={`M${x(order.handsOn)} ${top - 12}V${bottom}`} stroke={ink} stroke-width={1.5} />
          <text x={Math.min(x(order.handsOn), frame.width - 60)} y={top - 4} dx={4} font-size={11.5} fill={ink}>
            hands on
          </text>
        </>
      )}
      {order.lanes.map((lane, at) => (
        <Lane key={lane.cause} lane={lane} y={laneY(at)} x={x} frame={frame} />
      ))}
      {legend.map(([words, mark], at) => {
        const column = at % columns;
        const lx = 18 + (column * (frame.width - 20)) / columns;
        const ly = bottom + 18 + Math.floor(at / columns) * 20;
        return (
          <g key={words}>
            {mark(lx, ly)}
            <text x={lx + 13} y={ly + 4} font-size={11.5} fill={ink}>
              {words}
            </text>
          </g>
        );
      })}
    </svg>
  );
};

export const Order = ({ order, title }: { order: OrderPicture; title: string }) => {
  const host = useRef<HTMLDivElement>(null);
  if (order.lanes.length === 0) return null;
  return (
    <section class="order" aria-labelledby="order">
      <h2 id="order">Order: what you knew, and when work came near</h2>
      <div ref={host}>
        <Picture order={order} frame={wide} title={title} />
        <Picture order={order} frame={narrow} title={title} />
      </div>
      <details class="not-printed">
        <summary>The same in words</summary>
        <ul>
          {order.lanes.map((lane) => (
            <li key={lane.cause}>{laneWords(lane, order.call)}</li>
          ))}
        </ul>
      </details>
      <p class="buttons">
        <button
          type="button"
          onClick={() => {
            const drawing = host.current?.querySelector<SVGSVGElement>('.order-wide');
            if (drawing) void savePng(drawing, 'loose-tie-order.png');
          }}
        >
          Save this picture (PNG)
        </button>
      </p>
    </section>
  );
};
