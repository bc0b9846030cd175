/** The tools on the truck that serve for something, in order of their ids. */
import { toolKind } from '../catalogue/tools.ts';
import type { ToolKind } from '../catalogue/types.ts';
import type { Tool, World } from '../world/types.ts';

const toolsOf = (world: World, serves: (kind: ToolKind) => boolean): readonly Tool[] =>
  world.tools.filter((tool) => serves(toolKind(tool.kind)));

export const sticksOf = (world: World): readonly Tool[] => toolsOf(world, ({ barrier }) => barrier === 'stick');
export const coversOf = (world: World): readonly Tool[] => toolsOf(world, ({ barrier }) => barrier === 'cover');
export const testersOf = (world: World): readonly Tool[] => toolsOf(world, ({ testsOf }) => testsOf !== undefined);
export const supportsOf = (world: World): readonly Tool[] => toolsOf(world, ({ supports }) => supports === true);
export const clampSetsOf = (world: World): readonly Tool[] => toolsOf(world, ({ clamps }) => clamps !== undefined);
