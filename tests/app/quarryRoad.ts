/** The first drill alone, out of the app's own library. */
import { builtIn, type Library } from '../../src/app/library.ts';

const { offered, problems } = builtIn();

export const quarryRoad: Library = {
  offered: offered.filter(({ scenario }) => scenario.id === 'quarry-road-fog'),
  problems,
};
