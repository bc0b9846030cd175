/** Cable of temporary protective grounds by fault current and clearing time. */
import { useState } from 'preact/hooks';
import {
  asymmetricRating,
  groundingCables,
  meltingCurrent,
  requiredGroundingCable,
  withstandCurrent,
} from '../../engine/standards/groundingCable.ts';
import { format, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { Card, Table } from './Card.tsx';
import { Field, Pick, useQuantity } from './fields.tsx';

/** X/R that stands for each choice: below the end of Table 1, and that of the H table. */
const ratios = { low: 0, high: 30 } as const;

export const GroundsCard = ({ system }: { system: UnitSystem }) => {
  const fault = useQuantity('8.5 kA', 'current', system, { least: 0, above: true });
  const time = useQuantity('15 cycles', 'time', system, {
    least: 0,
    above: true,
    most: 0.5,
    because: 'ASTM F855 Table 1 ends at 30 cycles',
  });
  const [offset, setOffset] = useState<keyof typeof ratios>('low');
  const xOverR = ratios[offset];
  const known = fault.value !== null && time.value !== null ? { amps: fault.value, seconds: time.value } : null;
  const cable = known && requiredGroundingCable(known.amps, known.seconds, xOverR);
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
          <Pick
            label="X/R there"
            options={[
              ['low', 'to 1.8'],
              ['high', 'above 1.8, as near a substation'],
            ]}
            value={offset}
            onPick={setOffset}
          />
        </>
      }
      answers={[
        {
          label: 'Smallest cable',
          value: known && (cable ?? 'none listed: by engineering'),
          note: offset === 'low' ? 'ASTM F855 Table 1, withstand' : 'the smaller of ASTM F855 Table 1 and its H rating',
        },
        { label: 'It withstands', value: known && cable ? amps(withstandCurrent(cable, known.seconds, xOverR)) : null },
        {
          label: 'It would melt at',
          value: known && cable ? amps(meltingCurrent(cable, known.seconds, xOverR)) : null,
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
            'H rating, 15 cycles',
            `Melts${time.value === null ? ' at 15 cycles' : ` in ${format(time.value, 'time', system)}`} at`,
          ]}
          rows={groundingCables.map((name) => [
            name,
            amps(withstandCurrent(name, 0.25)),
            amps(withstandCurrent(name, 0.5)),
            amps(asymmetricRating(name).amperes),
            amps(meltingCurrent(name, time.value ?? 0.25, xOverR)),
          ])}
        />
      }
      sources={[
        'ASTM F855 Table 1 (asymmetry to 20 %, X/R to 1.8) and its H ratings (X/R 30, 15 cycles only)',
        'Melting: Onderdonk’s equation with 98 % of the nominal area; offset by the decrement factor of IEEE Std 80, X/R 30',
        '29 CFR 1910.269(n)',
      ]}
      leaves="Offset faults longer than 15 cycles; sets in parallel, each 10 % less; clamps and ferrules, which have grades of their own; whether the place of the ground makes an equipotential zone."
    />
  );
};
