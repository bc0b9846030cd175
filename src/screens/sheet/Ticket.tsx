/** The trouble ticket as the office typed it. */
import type { ComponentChildren } from 'preact';
import { format, type UnitSystem } from '../../engine/units/formatQuantity.ts';
import type { World } from '../../engine/world/types.ts';
import { capital } from '../words.ts';

const lights: Readonly<Record<string, string>> = { day: 'Daylight', dusk: 'Dusk', dawn: 'Dawn', night: 'Night' };

const wetnessWords = (wetness: number): string =>
  wetness === 0 ? 'everything dry' : wetness < 0.5 ? 'surfaces damp' : 'everything wet';

const airWords = (visibilityM: number): string =>
  visibilityM < 1000 ? 'fog' : visibilityM < 5000 ? 'haze' : 'clear air';

const weatherWords = ({ site }: World, units: UnitSystem): string =>
  [
    lights[site.light] ?? site.light,
    `${airWords(site.visibilityM)}, visibility ${format(site.visibilityM, 'length', units, 2)}`,
    wetnessWords(site.wetness),
    `wind ${format(site.windMs, 'speed', units, 2)}`,
    format(site.temperatureC, 'temperature', units, 2),
  ].join(', ');

const Row = ({ name, children }: { name: string; children: ComponentChildren }) => (
  <div class="row">
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
);

export const Ticket = ({ world, units }: { world: World; units: UnitSystem }) => {
  const { call, supply, crew, job } = world.given;
  return (
    <article class="ticket" aria-label="Trouble ticket">
      <header>
        <h2>Trouble ticket</h2>
        <p>
          {call.date} <b>{call.time}</b>
        </p>
      </header>
      <dl>
        <Row name="Place">{call.place}</Row>
        <Row name="Called in">{capital(call.from)}</Row>
        <Row name="Said">“{call.said}”</Row>
        <Row name="Out">
          {call.customersOut} {call.customersOut === 1 ? 'customer' : 'customers'}
        </Row>
        <Row name="History">
          {call.ticketHistory.length === 0 ? (
            'None on this tap.'
          ) : (
            <ul>
              {call.ticketHistory.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          )}
        </Row>
        <Row name="Circuit">
          {supply.circuit}, {supply.system} kV. Upstream: {supply.upstream.name}.
        </Row>
        <Row name="Weather">{weatherWords(world, units)}.</Row>
        <Row name="Crew">
          You.{' '}
          {crew.secondMin === 0
            ? `${capital(crew.secondName)} is with you.`
            : `${capital(crew.secondName)} can be there ${format(crew.secondMin, 'duration', units)} after you acknowledge.`}
        </Row>
        <Row name="Truck">
          <ul class="inline">
            {world.tools.map(({ id, name, words }) => (
              <li key={id}>{words.note && !name.includes(words.note) ? `${name} (${words.note})` : name}</li>
            ))}
          </ul>
        </Row>
        <Row name="Asked for">{job.words}</Row>
      </dl>
    </article>
  );
};
