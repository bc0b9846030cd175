/** A World of a few parts and nobody in it, for checks of what the circuit of a World does: no scenario, no call. */
import { seedFrom } from '../math/random.ts';
import { type PartSpec, partForm } from '../world/partForm.ts';
import type { Part, PointId, World } from '../world/types.ts';

/** A part at the origin, its nets as written. */
export const bare = (id: string, kind: string, more: Partial<PartSpec> = {}): Part => {
  const part = partForm({ id, kind, owner: null, where: 'bare', at: [0, 0, 0], ...more });
  return more.nets ? { ...part, nets: more.nets } : part;
};

/** The parts, with pairs of points joined by protective jumpers; soil of 100 ohm metres. */
export const bareWorld = (parts: readonly Part[], joined: readonly (readonly [PointId, PointId])[] = []): World => ({
  scenario: 'bare',
  scenarioHash: '',
  clock: { minute: 0 },
  site: {
    light: 'day',
    skyLux: 10000,
    visibilityM: 10000,
    wetness: 0,
    windMs: 0,
    windLimitMs: 13,
    precipitation: 'none',
    lightning: 'none',
    flooded: false,
    temperatureC: 20,
    resistivity: 100,
    altitudeM: 0,
    backgroundDb: 40,
    traffic: 'none',
    trafficMs: 15,
    weather: [],
    faults: [],
    thunderAt: null,
  },
  truck: { at: [0, -8, 0], place: 'clear', engine: false },
  parts,
  stands: [],
  people: [],
  tools: [],
  jumpers: joined.map((points, k) => ({ id: `jumper-${k + 1}`, tool: `ground-${k + 1}`, points })),
  covers: [],
  guards: { chocks: false, cones: false, keepOut: false, barrier: false, truckGround: false },
  orders: { clearance: null, switching: [], reported: [], customersTold: [] },
  knowledge: { looks: [], heard: [], asked: [], readings: [], tests: [] },
  paper: { findings: [], plans: [], briefings: [] },
  chance: seedFrom('bare'),
  given: {
    title: 'bare',
    call: {
      date: '2026-01-01',
      time: '12:00',
      place: 'nowhere',
      from: 'nobody',
      said: 'nothing',
      customersOut: 0,
      ticketHistory: [],
      caller: {},
      dispatcher: {},
    },
    supply: {
      system: '12.47Y/7.2 kV',
      lineVolts: 12470,
      phaseVolts: 7200,
      circuit: 'bare',
      at: 'line',
      faultAmps: 1000,
      xOverR: 1,
      upstream: { name: 'none', customers: 0, travelMin: 0, recloses: false },
    },
    crew: { secondMin: 0, secondName: 'nobody', today: '2026-01-01' },
    events: [],
    job: { id: 'none', words: 'none', restores: [] },
  },
  ended: null,
});
