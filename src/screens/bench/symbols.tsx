/**
 * Graphical symbols, drawn here; after which standard and by what basis each: symbolSources.ts. Contacts have a moving
 * blade and the qualifying mark at the fixed one (cross: breaker, bar: disconnector, ring: load switch, fuse on the blade:
 * fuse-disconnector), windings are half circles, earth is three bars. A contact is drawn as it stands, not always open. Each
 * is centred on 0,0 and joins its lane at −18 and +18.
 */
import type { ComponentChildren } from 'preact';
import type { SymbolName } from './symbolOf.ts';

const REACH = 18;

const Leads = ({ from = REACH, to = REACH }: { from?: number; to?: number }) => (
  <>
    <path d={`M0 ${-REACH}V${-from}`} />
    <path d={`M0 ${to}V${REACH}`} />
  </>
);

const blade = (closed: boolean): string => (closed ? 'M0 9V-9' : 'M0 9L-9.5 -7');

const Contact = ({ closed, children }: { closed: boolean; children?: ComponentChildren }) => (
  <>
    <Leads from={9} to={9} />
    <path d={blade(closed)} />
    {children}
  </>
);

/** G and Wh as strokes: they are part of the symbol, not words. */
const G = 'M4.6 -3.4A5.6 5.6 0 1 0 5.6 1.2H1.4';
const WH = 'M-8 -4L-6 4L-4 -2L-2 4L0 -4M2.6 -5V4M2.6 0.6C2.8 -1.6 6.8 -1.8 6.8 1V4';

/** R, for a breaker that recloses. */
const R = 'M-19.5 4V-4.5H-17a2.4 2.4 0 0 1 0 4.8H-19.5M-17.2 0.3L-14.6 4';
const CROSS = 'M-4 -13L4 -5M4 -13L-4 -5';
/** Half a square each: direct current or a cell above the diagonal, alternating current below it. */
const Converter = ({ on, from }: { on: boolean; from: string }) => (
  <>
    <Leads from={12} to={12} />
    <rect x="-12" y="-12" width="24" height="24" class={on ? 'body' : 'body idle'} />
    <path d={`M-12 12L12 -12${from}M1.5 7c1.2 -3.4 2.7 -3.4 3.9 0s2.7 3.4 3.9 0`} />
  </>
);

const Coil = ({ side }: { side: 1 | -1 }) => {
  const sweep = side === 1 ? 1 : 0;
  return (
    <path
      d={`M0 ${-REACH}V-16a4 4 0 0 ${sweep} 0 8a4 4 0 0 ${sweep} 0 8a4 4 0 0 ${sweep} 0 8a4 4 0 0 ${sweep} 0 8V${REACH}`}
    />
  );
};

/** Three bars at the end of a lead. */
export const Earth = () => (
  <g class="symbol-earth">
    <path d="M-9 0H9M-6 4H6M-3 8H3" />
  </g>
);

const drawn: Readonly<Record<SymbolName, (closed: boolean) => ComponentChildren>> = {
  system: () => (
    <>
      <Leads from={12} to={12} />
      <circle r="12" class="body" />
      <path d="M-7 0c2.3 -7 4.7 -7 7 0s4.7 7 7 0" />
    </>
  ),
  set: (closed) => (
    <>
      <Leads from={12} to={12} />
      <circle r="12" class={closed ? 'body' : 'body idle'} />
      <path d={G} />
    </>
  ),
  inverter: (on) => <Converter on={on} from="M-9.5 -8.5H-2.5M-9.5 -5.5h1.8m0.8 0h1.8m0.8 0h1.8" />,
  battery: (on) => <Converter on={on} from="M-8 -10V-3M-4.5 -8.3V-4.7M-10.5 -6.5H-8M-4.5 -6.5H-2" />,
  disconnector: (closed) => (
    <Contact closed={closed}>
      <path d="M-5 -9H5" />
    </Contact>
  ),
  switch: (closed) => (
    <Contact closed={closed}>
      <circle cx="0" cy="-9" r="2" class="pivot" />
    </Contact>
  ),
  breaker: (closed) => (
    <Contact closed={closed}>
      <path d={CROSS} />
    </Contact>
  ),
  recloser: (closed) => (
    <Contact closed={closed}>
      <path d={CROSS + R} />
    </Contact>
  ),
  'fuse-switch': (closed) => (
    <Contact closed={closed}>
      <path d="M-5 -9H5" />
      <rect
        x="-3.4"
        y="-6.5"
        width="6.8"
        height="12"
        class="hollow"
        transform={closed ? undefined : 'translate(-0.2 -0.4) rotate(-30.7 0 9)'}
      />
      <path d={blade(closed)} />
    </Contact>
  ),
  meter: (closed) => (
    <>
      <Leads from={closed ? 12 : 15} to={closed ? 12 : 15} />
      <circle r="12" class={closed ? 'body' : 'body idle'} />
      {closed ? <path d={WH} /> : <path d="M-5 -15H5M-5 15H5" />}
    </>
  ),
  arrester: () => (
    <>
      <rect x="-6.5" y="-13" width="13" height="26" class="body" />
      <path d={`M0 ${-REACH}V2M-3.5 -3L0 3L3.5 -3M-6.5 7H6.5M0 13V${REACH}`} />
    </>
  ),
  load: () => (
    <>
      <path d={`M0 ${-REACH}V${REACH}`} />
      <path d="M-7 -4H7L0 9Z" class="solid" />
    </>
  ),
  electrode: () => <path d={`M0 ${-REACH}V14`} />,
  ladder: () => (
    <>
      <path d={`M0 ${-REACH}V-10M0 8V14`} />
      <rect x="-5" y="-10" width="10" height="18" class="body" />
    </>
  ),
  line: () => <path d={`M0 ${-REACH}V${REACH}`} />,
  primary: () => (
    <>
      <Coil side={1} />
    </>
  ),
  secondary: () => (
    <>
      <Coil side={-1} />
    </>
  ),
  regulator: () => (
    <>
      <Coil side={1} />
      <path d="M-8 11L12 -9M6 -9.5H12V-3.5" />
    </>
  ),
  leak: (there) =>
    there ? <path class="leak" d={`M0 ${-REACH}V-13L-6 -10L6 -5L-6 0L6 5L-6 10L0 13V${REACH}`} /> : null,
  gap: (mended) =>
    mended ? (
      <path d={`M0 ${-REACH}V${REACH}`} />
    ) : (
      <path class="gap" d={`M0 ${-REACH}V-6M-6 -3L6 -9M-6 9L6 3M0 6V${REACH}`} />
    ),
  impedance: () => (
    <>
      <Leads from={11} to={11} />
      <rect x="-5" y="-11" width="10" height="22" class="body" />
    </>
  ),
  capacitor: () => (
    <>
      <Leads from={3} to={3} />
      <path d="M-9 -3H9M-9 3H9" />
    </>
  ),
};

/** One symbol; `closed` means conducting, running, or for a fault: leak there, joint mended. */
export const SymbolOf = ({ name, closed }: { name: SymbolName; closed: boolean }) => <>{drawn[name](closed)}</>;
