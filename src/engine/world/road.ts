/** Where the road lies: along x on the road side of the line, edges at these y, metres (an invented lane of one width). */
export const roadEdges = { near: -6.6, far: -11.4 } as const;
