/** Incident energy of an arc: the rule's table, and estimates that say so. */
import {
  arcClothingFrom,
  burnFrom,
  estimateArcEnergy,
  leeArcEnergy,
  tabledArcEnergy,
} from '../../engine/standards/arcEnergy.ts';
import { format, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { Card } from './Card.tsx';
import { Field, useQuantity } from './fields.tsx';

export const ArcCard = ({ system }: { system: UnitSystem }) => {
  const volts = useQuantity('12.47 kV', 'voltage', system, { least: 50, most: 46000, because: 'Table 6 ends there' });
  const fault = useQuantity('5 kA', 'current', system, { least: 0, above: true });
  const time = useQuantity('10 cycles', 'time', system, { least: 0, above: true });
  const distance = useQuantity('15 in', 'length', system, { least: 0.1, because: 'nearer the model means nothing' });
  const known =
    volts.value !== null && fault.value !== null && time.value !== null && distance.value !== null
      ? { v: volts.value, i: fault.value, t: time.value, d: distance.value }
      : null;
  const tabled = known && tabledArcEnergy(known.v, known.i, known.t);
  const estimate =
    known &&
    (known.v <= 600
      ? leeArcEnergy(known.v, known.i, known.t, known.d)
      : estimateArcEnergy(known.v, known.i, known.t, known.d));
  const energy = (value: number): string => format(value, 'arcEnergy', system, 2);
  return (
    <Card
      title="Arc estimate"
      says="Energy that an arc to ground in open air throws at somebody, single phase."
      fields={
        <>
          <Field label="System voltage, phase to phase" typed={volts} hint="To 600 V: the voltage across the arc" />
          <Field label="Fault current" typed={fault} />
          <Field label="Clearing time" typed={time} />
          <Field label="Distance from the arc" typed={distance} hint="The table holds at 15 in (380 mm) alone" />
        </>
      }
      answers={[
        {
          label: 'By the table, at 15 in',
          value: known && (tabled ? `${energy(tabled.calories)} clothing` : 'no answer: another method is required'),
          note: tabled ? `${tabled.source}, row to ${format(tabled.rowAmperes, 'current', system)}` : undefined,
        },
        {
          label: 'Estimate at the distance given',
          value: known && (estimate ? energy(estimate.calories) : 'no estimate from 600 V to 4 kV'),
          note: estimate
            ? `${estimate.source}${estimate.extrapolated ? '; beyond the rows of the table' : ''}`
            : undefined,
        },
        { label: 'Bare skin burns from', value: energy(burnFrom), note: 'Appendix E, III.B' },
        { label: 'Arc-rated outer layer from', value: energy(arcClothingFrom), note: '(l)(8)(iv)(D), (l)(8)(v)' },
      ]}
      warnings={estimate ? ['An estimate is no rating: clothing is chosen by the employer’s own assessment.'] : []}
      sources={[
        '29 CFR 1910.269 Appendix E Table 6 (rubber-glove work, 4 to 46 kV, to 20 kA)',
        'Estimate: from the same table, in proportion to time, inverse square of distance',
        'To 600 V: Lee equation, from memory; Appendix E Table 3 calls it conservative there',
      ]}
      leaves="Arcs in boxes, between phases, or moving; pressure, molten metal, and clothing that ignites."
    />
  );
};
