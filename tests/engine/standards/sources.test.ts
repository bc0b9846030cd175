/** Systems, engine sets, inverters, a lost neutral: how they behave beside the values of the qualification report. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { abs, add, complex, scale, sub } from '../../../src/engine/math/complex.ts';
import {
  firstCycleFault,
  generatorBase,
  governorLimit,
  sustainedFault,
} from '../../../src/engine/standards/generator.ts';
import {
  equivalentSource,
  inverterFault,
  inverterInto,
  inverterRated,
  timeOnIsland,
  voltageTrip,
} from '../../../src/engine/standards/inverter.ts';
import { legVolts } from '../../../src/engine/standards/openNeutral.ts';
import {
  nominalSystems,
  phaseToEarth,
  phaseToGroundFault,
  phaseToPhaseFault,
  soundPhaseInFault,
  sourceImpedance,
  systemById,
  threePhaseFault,
  transposed,
} from '../../../src/engine/standards/systems.ts';

const ohms = fc.record({
  re: fc.double({ min: 0.1, max: 500, noNaN: true }),
  im: fc.double({ min: -200, max: 200, noNaN: true }),
});

describe('nominal systems', () => {
  it('stand by rising line volts, wyes with the volts to neutral that their name gives', () => {
    const lines = nominalSystems.map(({ line }) => line);
    expect(lines).toEqual([...lines].sort((a, b) => a - b));
    for (const system of nominalSystems) {
      if (system.phase === undefined) expect(system.connection).toBe('delta');
      else expect(system.id).toBe(`${system.line / 1000}Y/${system.phase / 1000}`);
    }
    expect(systemById('11')).toBeUndefined();
  });

  it('let a delta rise to line volts when a phase is grounded, and not a multigrounded wye', () => {
    for (const system of nominalSystems) {
      const rise = soundPhaseInFault(system) / phaseToEarth(system);
      expect(rise).toBeCloseTo(system.connection === 'delta' ? Math.sqrt(3) : 1, 9);
    }
  });

  it('give faults in the order that sequence impedances give', () => {
    const line = transposed(complex(0.3, 1), complex(0.1, 0.4));
    const three = threePhaseFault(7200, line);
    expect(phaseToPhaseFault(7200, line)).toBeCloseTo((three * Math.sqrt(3)) / 2, 6);
    expect(phaseToGroundFault(7200, line)).toBeLessThan(three);
    expect(phaseToGroundFault(7200, line, 40)).toBeLessThan(7200 / 40);
    expect(abs(sourceImpedance(7200, 3000, 6))).toBeCloseTo(2.4, 9);
  });
});

describe('an engine set', () => {
  const set = { rating: 6500, volts: 240, resistance: 0.03, subtransient: 0.14, synchronous: 2 };

  it('gives less for long than in its first cycles, and no more power than its engine', () => {
    expect(firstCycleFault(set)).toBeGreaterThan(10 * sustainedFault(set));
    expect(governorLimit(set, 0.9)).toBeCloseTo(5850, 9);
    expect(generatorBase(set)).toBeCloseTo(8.8615, 4);
  });
});

describe('an inverter', () => {
  const inverter = { rating: 6000, volts: 240 };

  it('never passes its current limit or its voltage, whatever it feeds', () => {
    fc.assert(
      fc.property(ohms, (load) => {
        const { volts, amperes, limited } = inverterInto(inverter, load);
        expect(amperes).toBeLessThanOrEqual(inverterFault(inverter) * (1 + 1e-12));
        expect(volts).toBeLessThanOrEqual(inverter.volts * (1 + 1e-12));
        expect(limited).toBe(volts < inverter.volts);
        expect(volts).toBeCloseTo(amperes * abs(load), 6);
      }),
      { seed: 20 },
    );
  });

  it('is the same current as its equivalent source, short circuit included', () => {
    fc.assert(
      fc.property(ohms, (load) => {
        const { emf, z } = equivalentSource(inverter, load);
        expect(emf / abs(add(z, load))).toBeCloseTo(inverterInto(inverter, load).amperes, 9);
      }),
      { seed: 20 },
    );
    const { emf, z } = equivalentSource(inverter, complex(0));
    expect(emf / abs(z)).toBeCloseTo(1.2 * inverterRated(inverter), 9);
  });

  it('leaves a short at once, an island in two seconds, and one that islands wrongly never, on a load that it carries', () => {
    expect(timeOnIsland(inverter, complex(0.5))).toBe(0.166);
    expect(timeOnIsland(inverter, complex(20))).toBe(2);
    expect(timeOnIsland({ ...inverter, islanding: true }, complex(20))).toBe(Number.POSITIVE_INFINITY);
    expect(timeOnIsland({ ...inverter, islanding: true }, complex(0.5))).toBe(0.166);
    expect(voltageTrip(1)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('a lost neutral', () => {
  it('shares 240 V between the legs by their impedances, and half each with a sound neutral', () => {
    fc.assert(
      fc.property(ohms, ohms, (one, two) => {
        const open = legVolts(120, one, two, Number.POSITIVE_INFINITY);
        expect(abs(sub(add(open.leg1, open.leg2), complex(240)))).toBeLessThan(1e-9);
        // The same current through both: leg volts in the ratio of the impedances.
        const currents = [open.leg1, open.leg2].map((volts, k) => {
          const z = k === 0 ? one : two;
          return scale(
            complex(volts.re * z.re + volts.im * z.im, volts.im * z.re - volts.re * z.im),
            1 / (z.re * z.re + z.im * z.im),
          );
        });
        expect(abs(sub(currents[0] ?? complex(0), currents[1] ?? complex(1)))).toBeLessThan(
          1e-6 * (1 + abs(currents[0] ?? complex(0))),
        );
        const sound = legVolts(120, one, two, 1e-9);
        expect(abs(sound.leg1)).toBeCloseTo(120, 5);
        expect(abs(sound.leg2)).toBeCloseTo(120, 5);
      }),
      { seed: 20 },
    );
  });
});
