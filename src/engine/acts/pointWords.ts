/** A bare-metal point in words: the part's name and which end of it. */
import { findPart, splitPoint } from '../world/edit.ts';
import type { PointId, World } from '../world/types.ts';

/** 'fused cutout, pole QR-13 (top)'; the id itself where there is no such part. */
export function pointWords(world: World, point: PointId): string {
  const [id = '', terminal = ''] = splitPoint(point) ?? [];
  const part = findPart(world, id);
  return part ? `${part.name} (${terminal})` : point;
}
