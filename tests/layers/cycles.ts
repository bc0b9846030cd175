/** Finds import cycles: Tarjan's strongly connected components of the graph of files (SIAM J. Comput. 1, 1972). */

/** Components of more than one file, or a file that imports itself; files sorted within. */
export const cyclesIn = (graph: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] => {
  const order = new Map<string, number>();
  const low = new Map<string, number>();
  const open: string[] = [];
  const cycles: string[][] = [];

  const visit = (file: string): number => {
    const index = order.size;
    order.set(file, index);
    open.push(file);
    let lowest = index;
    for (const next of graph.get(file) ?? []) {
      if (!order.has(next)) lowest = Math.min(lowest, visit(next));
      else if (open.includes(next)) lowest = Math.min(lowest, order.get(next) ?? lowest);
    }
    low.set(file, lowest);
    if (lowest === index) {
      const component = open.splice(open.indexOf(file));
      if (component.length > 1 || graph.get(file)?.includes(file)) cycles.push(component.sort());
    }
    return lowest;
  };

  for (const file of [...graph.keys()].sort()) if (!order.has(file)) visit(file);
  return cycles;
};
