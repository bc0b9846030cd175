/** A bare-metal point in words: which end of it, and the part's name. */
import { pointName } from '../catalogue/pointNames.ts';
import { findPart, splitPoint } from '../world/edit.ts';
import type { PointId, World } from '../world/types.ts';

/** 'top contact', the end alone, where its part is named beside it; the id itself where there is no such part. */
export function endWords(world: World, point: PointId): string {
  const [id = '', terminal = ''] = splitPoint(point) ?? [];
  const part = findPart(world, id);
  return part ? pointName(part.kind, terminal) : point;
}

/** 'top contact of the fused cutout, pole QR-13'; the id itself where there is no such part. */
export function pointWords(world: World, point: PointId): string {
  const part = findPart(world, splitPoint(point)?.[0] ?? '');
  return part ? `${endWords(world, point)} of the ${part.name}` : point;
}
