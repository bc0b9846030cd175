/** Cable of temporary protective grounds by fault current and clearing time. */
import {
  groundingCables,
  meltingCurrent,
  requiredGroundingCable,
  withstandCurrent,
} from '../../engine/standards/groundingCable.ts';
import { format, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { Card, Table } from './Card.tsx';
import { Field, useQuantity } from './fields.tsx';

export const GroundsCard = ({ system }: { system: UnitSystem }) => {
  const fault = useQuantity('8.5 kA', 'current', system, { least: 0, above: true });
  const time = useQuantity('15 cycles', 'time', system, {
    least: 0,
    above: true,
    most: 0.5,
    because: 'ASTM F855 Table 1 ends at 30 cycles',
  });
  const known = fault.value !== null && time.value !== null ? { amps: fault.value, seconds: time.value } : null;
  const cable = known && requiredGroundingCable(known.amps, known.seconds);
  const amps = (value: number | undefined): string =>
    value === undefined ? 'no figure' : format(value, 'current', system);
  return (
    <Card
      title="Protective grounds"
      says="The smallest copper cable that carries the fault until it is cleared, and stays fit to be trusted."
      fields={
        <>
          <Field label="Fault current at the worksite" typed={fault} />
          <Field label="Clearing time" typed={time} hint="with the slowest backup that may have to clear it" />
        </>
      }
      answers={[
        {
          label: 'Smallest cable',
          value: known && (cable ?? 'none listed: use sets in parallel, by engineering'),
          note: 'ASTM F855 Table 1, withstand',
        },
        { label: 'It withstands', value: known && cable ? amps(withstandCurrent(cable, known.seconds)) : null },
        {
          label: 'It would melt at',
          value: known && cable ? amps(meltingCurrent(cable, known.seconds)) : null,
          note: 'Onderdonk, for comparison',
        },
        { label: 'Never smaller than', value: '#2', note: '29 CFR 1910.269(n)(4)(ii)' },
      ]}
      table={
        <Table
          caption="Copper cables"
          heads={[
            'Cable',
            'Withstand, 15 cycles',
            'Withstand, 30 cycles',
            `Melts${time.value === null ? ' at 15 cycles' : ` in ${format(time.value, 'time', system)}`} at`,
          ]}
          rows={groundingCables.map((name) => [
            name,
            amps(withstandCurrent(name, 0.25)),
            amps(withstandCurrent(name, 0.5)),
            amps(meltingCurrent(name, time.value ?? 0.25)),
          ])}
        />
      }
      sources={[
        'ASTM F855 Table 1 (asymmetry to 20 %, X/R to 1.8)',
        'Melting: Onderdonk’s equation with 98 % of the nominal area',
        '29 CFR 1910.269(n)',
      ]}
      leaves="Higher X/R, which needs the standard’s H table; clamps and ferrules, which have grades of their own; whether the place of the ground makes an equipotential zone."
    />
  );
};
