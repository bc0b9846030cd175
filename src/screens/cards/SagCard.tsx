/** Sag, tension and length of a level span. */
import { useState } from 'preact/hooks';
import { conductorById, conductors } from '../../engine/standards/conductors.ts';
import {
  catenaryLength,
  catenarySag,
  parabolicSag,
  sagAt,
  tensionForSag,
  weightPerMetre,
} from '../../engine/standards/sag.ts';
import { format, formatNumber, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { Card, Table } from './Card.tsx';
import { Field, lengthBoth, Pick, useQuantity } from './fields.tsx';

export const SagCard = ({ system }: { system: UnitSystem }) => {
  const us = system === 'us';
  const [id, setId] = useState('acsr-4');
  const [given, setGiven] = useState<'tension' | 'sag'>('tension');
  const span = useQuantity(us ? '200 ft' : '60 m', 'length', system, { least: 1, most: 500 });
  const tension = useQuantity(us ? '300 lbf' : '1.3 kN', 'force', system, { least: 10 });
  const sag = useQuantity(us ? '2 ft' : '0.6 m', 'length', system, { least: 0.01 });
  const wire = conductorById(id);
  const weight = wire ? weightPerMetre(wire.kilogramsPerMetre) : null;
  const known = weight === null || span.value === null ? null : { w: weight, s: span.value };
  const pull =
    known === null
      ? null
      : given === 'tension'
        ? tension.value
        : sag.value === null
          ? null
          : tensionForSag(known.w, known.s, sag.value);
  const low = known && pull !== null ? catenarySag(known.w, known.s, pull) : null;
  const flat = known && pull !== null ? parabolicSag(known.w, known.s, pull) : null;
  const steep = known !== null && low !== null && low > 0.1 * known.s;
  return (
    <Card
      title="Sag"
      says="How far a level span hangs, how hard it pulls, and how long the wire is."
      fields={
        <>
          <Pick
            label="Conductor"
            options={conductors.map((each) => [each.id, each.name] as const)}
            value={id}
            onPick={setId}
          />
          <Field label="Span" typed={span} />
          <Pick
            label="Given"
            options={[
              ['tension', 'the tension'],
              ['sag', 'the sag'],
            ]}
            value={given}
            onPick={setGiven}
          />
          {given === 'tension' ? (
            <Field label="Horizontal tension" typed={tension} />
          ) : (
            <Field label="Sag at mid-span" typed={sag} />
          )}
        </>
      }
      answers={[
        {
          label: 'Sag at mid-span',
          value: low === null ? null : lengthBoth(low, system),
          note: flat === null ? undefined : `catenary; parabola ${format(flat, 'length', system)}`,
        },
        {
          label: 'Horizontal tension',
          value: pull === null ? null : format(pull, 'force', system),
          note:
            wire?.strength === undefined || pull === null
              ? 'no strength known for this conductor'
              : `${formatNumber((100 * pull) / wire.strength, 2)} % of the rated strength${wire.strengthRead ? '' : ' (strength from memory)'}`,
        },
        {
          label: 'Wire in the span',
          value: known && pull !== null ? lengthBoth(catenaryLength(known.w, known.s, pull), system) : null,
        },
        {
          label: 'Weight',
          value: wire
            ? `${format(us ? wire.kilogramsPerMetre * 304.8 : wire.kilogramsPerMetre * 1000, 'mass', system)} ${us ? 'per 1000 ft' : 'per km'}`
            : null,
        },
      ]}
      warnings={steep ? ['So deep a sag is no line span; check the figures.'] : []}
      table={
        known && flat !== null ? (
          <Table
            caption="Along the span"
            heads={['From the support', 'Below the supports']}
            rows={[0.1, 0.2, 0.3, 0.4, 0.5].map((part) => [
              format(part * known.s, 'length', system),
              lengthBoth(sagAt(known.s, flat, part * known.s), system),
            ])}
          />
        ) : undefined
      }
      sources={[
        'Catenary and parabola as in line-design manuals; length S + 8D²/3S from memory',
        'Weights of ACSR: manufacturers’ tables as published',
      ]}
      leaves="Stretch, creep, temperature, wind, ice, and a difference in height between the supports."
    />
  );
};
