/**
 * The one-line as a drawing. Live metal is thick, red and broken by a pale thread, and says so in words; the rest is a thin
 * line. One place takes the tab; arrows go to the nearest bus or device that way, Enter or a space does what a click does.
 */
import { useRef, useState } from 'preact/hooks';
import { readBus } from './bench.ts';
import { BusItem, type DiagramProps, EdgeItem, SpanItem } from './DiagramItems.tsx';

interface Item {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** A bar's ends: from above and below it is as near as its nearest stretch. */
  readonly x1?: number;
  readonly x2?: number;
}

const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowDown: [0, 1],
  ArrowUp: [0, -1],
};

/** The nearest item in a direction; what lies off to the side counts double. */
const towards = (items: readonly Item[], from: Item, [dx, dy]: readonly [number, number]): Item | undefined =>
  items
    .map((item) => {
      const x = dy === 0 ? item.x : Math.min(Math.max(from.x, item.x1 ?? item.x), item.x2 ?? item.x);
      const [right, down] = [x - from.x, item.y - from.y];
      return { item, along: right * dx + down * dy, off: Math.abs(right * dy) + Math.abs(down * dx) };
    })
    .filter(({ along, off }) => along > 2 && off <= 3 * along)
    .sort((a, b) => a.along + 2 * a.off - (b.along + 2 * b.off))[0]?.item;

export const Diagram = (props: DiagramProps) => {
  const { bench, sheet } = props;
  const svg = useRef<SVGSVGElement>(null);
  const items: readonly Item[] = [
    ...sheet.buses.map(({ bus, labelX, x1, x2, y }) => ({ id: bus.id, x: labelX, y, x1, x2 })),
    ...sheet.edges.map(({ edge, x, x2, symbolY, y1 }) =>
      x2 === null ? { id: edge.id, x: x + 10, y: symbolY } : { id: edge.id, x: symbolY, y: y1 },
    ),
  ];
  const first = [...items].sort((a, b) => a.y - b.y || a.x - b.x)[0]?.id ?? '';
  const [tabbed, setTabbed] = useState(first);
  const live = new Map(sheet.buses.map(({ bus }) => [bus.id, readBus(bench, bus).worst.live]));
  const isLive = (bus: string): boolean => live.get(bus) ?? false;
  const tab = (id: string) => ({
    tabindex: (items.some((item) => item.id === tabbed) ? tabbed : first) === id ? 0 : -1,
    onFocus: () => setTabbed(id),
  });
  const onKeyDown = (event: KeyboardEvent): void => {
    const target = (event.target as Element).closest<SVGGElement>('[role="button"]');
    const id = target?.dataset.bus ?? target?.dataset.edge;
    const here = items.find((item) => item.id === id);
    if (!target || !here) return;
    const arrow = arrows[event.key];
    if (arrow) {
      const next = towards(items, here, arrow);
      const focus = [...(svg.current?.querySelectorAll<SVGGElement>('[role="button"]') ?? [])].find(
        (each) => (each.dataset.bus ?? each.dataset.edge) === next?.id,
      );
      focus?.focus();
    } else if (event.key === 'Enter' || event.key === ' ') {
      if (target.dataset.bus === undefined) props.onEdge(here.id);
      else props.onBus(here.id);
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const { width, height, heads, buses, edges } = sheet;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing is no fieldset
    <svg
      ref={svg}
      class="one-line"
      viewBox={`0 0 ${width} ${height}`}
      role="group"
      aria-label={`One-line diagram: ${sheet.title}`}
      style={{
        maxWidth: `${width * (sheet.id === 'whole' ? 1.35 : 1.1)}px`,
        minWidth: sheet.id === 'whole' ? undefined : `${width}px`,
        aspectRatio: `${width} / ${height}`,
      }}
      width={width}
      onKeyDown={onKeyDown}
    >
      {heads.map((head) => (
        <text key={head.id} class="head" x={head.x} y={16}>
          {head.title}
        </text>
      ))}
      {buses.map((placed) => (
        <BusItem key={placed.bus.id} props={props} placed={placed} tab={tab(placed.bus.id)} />
      ))}
      {edges.map((placed) =>
        placed.x2 === null ? (
          <EdgeItem key={placed.edge.id} props={props} placed={placed} tab={tab(placed.edge.id)} isLive={isLive} />
        ) : (
          <SpanItem key={placed.edge.id} props={props} placed={placed} tab={tab(placed.edge.id)} isLive={isLive} />
        ),
      )}
    </svg>
  );
};
