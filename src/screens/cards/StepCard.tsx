/** Step and touch voltage round a driven rod, and what IEEE Std 80 tolerates. */
import {
  rodPotential,
  rodResistance,
  rodStep,
  rodStepFromRod,
  tolerableStep,
  tolerableTouch,
} from '../../engine/standards/electrode.ts';
import { format, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { Card, Table } from './Card.tsx';
import { Field, useQuantity } from './fields.tsx';

const PACE = 1;

export const StepCard = ({ system }: { system: UnitSystem }) => {
  const us = system === 'us';
  const soil = useQuantity('100 ohm m', 'resistivity', system, { least: 0, above: true });
  const current = useQuantity('100 A', 'current', system, { least: 0 });
  const length = useQuantity(us ? '8 ft' : '2.4 m', 'length', system, { least: 0.3 });
  const diameter = useQuantity(us ? '5/8 in' : '16 mm', 'length', system, { least: 0.005, most: 0.1 });
  const distance = useQuantity(us ? '3 ft' : '1 m', 'length', system, {
    least: 0.05,
    because: 'nearer one stands on the rod',
  });
  const time = useQuantity('0.5 s', 'time', system, {
    least: 0.03,
    most: 3,
    because: 'IEEE Std 80 holds from 0.03 to 3 s',
  });
  const known =
    soil.value !== null && current.value !== null && length.value !== null && diameter.value !== null
      ? { rho: soil.value, i: current.value, l: length.value, d: diameter.value }
      : null;
  const ohms = known && rodResistance(known.rho, known.l, known.d);
  const step = known && distance.value !== null ? rodStep(known.rho, known.i, known.l, distance.value, PACE) : null;
  const footing = soil.value === null ? null : { soil: soil.value };
  const allowed = footing && time.value !== null ? tolerableStep(footing, time.value) : null;
  const touch = footing && time.value !== null ? tolerableTouch(footing, time.value) : null;
  const volt = (value: number): string => format(value, 'voltage', system);
  return (
    <Card
      title="Step voltage"
      says="What stands between two feet a metre apart while current goes into the ground at a rod."
      fields={
        <>
          <Field label="Soil resistivity" typed={soil} />
          <Field label="Current into the rod" typed={current} />
          <Field label="Rod length" typed={length} />
          <Field label="Rod diameter" typed={diameter} />
          <Field label="Nearer foot from the rod" typed={distance} />
          <Field label="Time until cleared" typed={time} />
        </>
      }
      answers={[
        { label: 'Step voltage there', value: step === null ? null : volt(step), note: 'pace of 1 m' },
        {
          label: 'One foot on the rod',
          value: known && volt(rodStepFromRod(known.rho, known.i, known.l, known.d, PACE)),
        },
        {
          label: 'The rod itself',
          value: known && ohms !== null ? volt(known.i * ohms) : null,
          note: ohms === null ? undefined : `against remote earth; the rod has ${format(ohms, 'resistance', system)}`,
        },
        {
          label: 'Tolerable step',
          value: allowed === null ? null : volt(allowed),
          note: `IEEE Std 80, body of 50 kg${touch === null ? '' : `; tolerable touch ${volt(touch)}`}`,
        },
      ]}
      warnings={
        step !== null && allowed !== null && step > allowed
          ? ['More than is tolerable: keep out, shuffle or hop away with feet together.']
          : []
      }
      table={
        known ? (
          <Table
            caption="Round this rod"
            heads={['From the rod', 'Surface against remote earth', 'Step of 1 m outward']}
            rows={[0.5, 1, 2, 3, 5, 10, 20].map((metres) => [
              format(metres, 'length', system),
              volt(rodPotential(known.rho, known.i, known.l, metres)),
              volt(rodStep(known.rho, known.i, known.l, metres, PACE)),
            ])}
          />
        ) : undefined
      }
      sources={[
        'Rod: Dwight’s formula; surface as of a line source (reproduces MIL-HDBK-419A Table 2-7)',
        'Tolerable voltages: IEEE Std 80-2013, body of 1000 Ω and 50 kg',
      ]}
      leaves="Layers, frost, salt, rods and pipes nearby, shoes, and the soil that a high current heats."
    />
  );
};
