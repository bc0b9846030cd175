/** Fuse link for a transformer: carries its load and inrush, and clears what fault there is. */
import { useState } from 'preact/hooks';
import { clearTime, type FuseLink, type LinkSpeed, linkSizes, meltTime } from '../../engine/standards/fuseLinks.ts';
import { fullLoadCurrent, transformerSizes } from '../../engine/standards/transformer.ts';
import { format, formatNumber, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import { Card, Table } from './Card.tsx';
import { Field, Pick, useQuantity } from './fields.tsx';

/** Inrush that a link has to live through, in multiples of full load and seconds: usual points, from memory. */
const inrush = [
  [12, 0.1],
  [25, 0.01],
] as const;

/** Smallest link that carries full load and is not melted by the inrush; undefined when none is listed. */
export const smallestLink = (speed: LinkSpeed, fullLoad: number): FuseLink | undefined =>
  linkSizes
    .map((rating): FuseLink => ({ speed, rating }))
    .find(
      (link) =>
        link.rating >= fullLoad && inrush.every(([times, seconds]) => meltTime(link, times * fullLoad) > seconds),
    );

/** Least current that the link is certain to clear, amperes, to one part in a thousand. */
export const certainCurrent = (link: FuseLink): number => {
  let [carries, clears] = [link.rating, 10 * link.rating];
  while (clears - carries > 1e-3 * carries) {
    const middle = (carries + clears) / 2;
    if (Number.isFinite(clearTime(link, middle))) clears = middle;
    else carries = middle;
  }
  return clears;
};

export const FuseCard = ({ system }: { system: UnitSystem }) => {
  const volts = useQuantity('7.2 kV', 'voltage', system, { least: 1000 });
  const fault = useQuantity('850 A', 'current', system, { least: 0, above: true });
  const [rating, setRating] = useState('25000');
  const [speed, setSpeed] = useState<LinkSpeed>('K');
  const size = Number(rating);
  const full = volts.value === null ? null : fullLoadCurrent(size, volts.value);
  const link = full === null ? undefined : smallestLink(speed, full);
  const name = ({ rating: amps, speed: letter }: FuseLink): string => `${amps}${letter}`;
  const amps = (value: number): string => format(value, 'current', system);
  const time = (seconds: number): string =>
    Number.isFinite(seconds) ? format(seconds, 'time', system) : 'does not melt for certain';
  return (
    <Card
      title="Fuse link by transformer size"
      says="The smallest link that carries the load and the inrush of a transformer, and how long it takes to clear a fault."
      fields={
        <>
          <Pick
            label="Transformer"
            options={transformerSizes.map((va) => [String(va), format(va, 'apparentPower', system)] as const)}
            value={rating}
            onPick={setRating}
          />
          <Field label="Voltage across its primary" typed={volts} hint="7.2 kV on a 12.47Y/7.2 system" />
          <Pick
            label="Speed"
            options={[
              ['K', 'K, fast'],
              ['T', 'T, slow'],
            ]}
            value={speed}
            onPick={setSpeed}
          />
          <Field label="Fault current there" typed={fault} />
        </>
      }
      answers={[
        { label: 'Full-load current', value: full === null ? null : amps(full) },
        {
          label: 'Smallest link',
          value: full === null ? null : link ? name(link) : 'none listed',
          note: 'common practice; the utility’s own table governs',
        },
        {
          label: 'It clears the fault within',
          value: link && fault.value !== null ? time(clearTime(link, fault.value)) : null,
          note: 'longest, by size; the maker’s own curve governs',
        },
        {
          label: 'It melts for certain from',
          value: link ? amps(certainCurrent(link)) : null,
          note:
            link && full !== null
              ? `${formatNumber(certainCurrent(link) / full, 2)} times full load: no overload protection`
              : undefined,
        },
      ]}
      table={
        <Table
          caption={`${speed} links${volts.value === null ? '' : ` at ${format(volts.value, 'voltage', system)}`}`}
          heads={['Transformer', 'Full load', 'Smallest link', 'Clears the fault within']}
          rows={transformerSizes.map((va) => {
            const load = volts.value === null ? null : fullLoadCurrent(va, volts.value);
            const fits = load === null ? undefined : smallestLink(speed, load);
            return [
              format(va, 'apparentPower', system),
              load === null ? '…' : amps(load),
              load === null ? '…' : fits ? name(fits) : 'none listed',
              fits && fault.value !== null ? time(clearTime(fits, fault.value)) : '…',
            ];
          })}
        />
      }
      sources={[
        'Least and most melting currents of each size for 300 s (600 s above 100 A), 10 s and 0.1 s: ANSI C37.42, from memory',
        'Between these points the bend of the coarse curves of the OpenDSS TCC_Curve library (klink, tlink), read',
        'A link carries 200 % of its rating: notes on a maker’s curve sheet, read. One cycle of arcing: from memory',
        'Inrush of 12 times full load for 0.1 s and 25 times for 0.01 s: common practice, from memory',
      ]}
      leaves="Maker’s curves by size, which differ; preload, cold-load pickup, coordination with the device upstream, lightning."
    />
  );
};
