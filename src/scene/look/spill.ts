/**
 * Light that falls out of lit windows on the ground before them. Model: a pane of luminance L lights a spot of the ground by
 * E = L A cos cos' / r², diffusely given back with reflectance 0.2 (grass and gravel; estimate), so that the ground is by E 0.2 / pi as
 * bright as the pane by L. Left out: what stands in the light, and the colour of the ground.
 */
import { AdditiveBlending, BufferAttribute, BufferGeometry, Group, Mesh, MeshBasicMaterial, Vector3 } from 'three';
import { groundAt } from '../place/lie.ts';

/** A lit pane: its middle, the way it looks (level), its width and height, metres. */
export interface Pane {
  readonly at: Vector3;
  readonly out: Vector3;
  readonly width: number;
  readonly height: number;
}

/** How far from its wall and to both sides light is followed, metres, and in how many steps. */
const FAR = 6;
const ASIDE = 4;
const STEPS = 12;
const REFLECTANCE = 0.2;
/** Above the ground, and off the wall, metres. */
const OVER = 0.03;
const OFF = 0.15;

/** Share of a pane's brightness that a spot of level ground has which lies so far before it, aside of it and below it, metres. */
export const spillOf = ({ width, height }: Pane, before: number, aside: number, below: number): number => {
  const r2 = before * before + aside * aside + below * below;
  return (REFLECTANCE / Math.PI) * width * height * (before / Math.sqrt(r2)) * (below / Math.sqrt(r2)) * (1 / r2);
};

/** Brightest spots of panes as ground before them, one sheet for all. */
const sheetOf = (panes: readonly Pane[]): BufferGeometry => {
  const position: number[] = [];
  const colour: number[] = [];
  const index: number[] = [];
  for (const pane of panes) {
    const { at, out } = pane;
    const first = position.length / 3;
    for (let i = 0; i <= STEPS; i++)
      for (let j = 0; j <= STEPS; j++) {
        const before = OFF + FAR * (i / STEPS) ** 1.6;
        const aside = ASIDE * (j / (STEPS / 2) - 1);
        const [x, y] = [at.x + out.x * before - out.y * aside, at.y + out.y * before + out.x * aside];
        const ground = groundAt(x, y) + OVER;
        position.push(x, y, ground);
        // To nothing at its edges, so that the sheet ends unseen.
        const rim = (1 - (i / STEPS) ** 2) * (1 - (aside / ASIDE) ** 2);
        const share = rim * spillOf(pane, before, aside, Math.max(0.1, at.z - ground));
        colour.push(share, share, share);
        if (i === STEPS || j === STEPS) continue;
        const p = first + i * (STEPS + 1) + j;
        index.push(p, p + STEPS + 1, p + 1, p + 1, p + STEPS + 1, p + STEPS + 2);
      }
  }
  const sheet = new BufferGeometry();
  sheet.setAttribute('position', new BufferAttribute(new Float32Array(position), 3));
  sheet.setAttribute('color', new BufferAttribute(new Float32Array(colour), 3));
  sheet.setIndex(index);
  return sheet;
};

export interface Spill {
  readonly group: Group;
  /** Lies before these panes from now on. */
  follow(panes: readonly Pane[]): void;
  /** Brightness of a lit pane in the picture's units, and the fog's extinction, per metre. */
  shine(level: number, extinction: number): void;
  dispose(): void;
}

export const spillOn = (): Spill => {
  const group = new Group();
  const material = new MeshBasicMaterial({
    vertexColors: true,
    blending: AdditiveBlending,
    transparent: true,
    depthWrite: false,
    // Added light is dimmed by the air in between; what the air itself sends is on the ground below already.
    fog: false,
    // The land under it is coarser than it and would come through.
    polygonOffset: true,
    polygonOffsetFactor: -6,
    polygonOffsetUnits: -60,
  });
  const air = { value: 0 };
  material.onBeforeCompile = (shader) => {
    shader.uniforms.extinction = air;
    shader.fragmentShader = `uniform float extinction;\n${shader.fragmentShader.replace(
      '#include <opaque_fragment>',
      '#include <opaque_fragment>\ngl_FragColor.rgb *= exp(-extinction / gl_FragCoord.w);',
    )}`;
  };
  const warm = new Vector3(1, 0.72, 0.4);
  const clear = (): void => {
    for (const child of group.children) (child as Mesh).geometry.dispose();
    group.clear();
  };
  return {
    group,
    follow: (panes) => {
      clear();
      if (panes.length > 0) group.add(new Mesh(sheetOf(panes), material));
    },
    shine: (level, extinction) => {
      air.value = extinction;
      material.color.setRGB(warm.x * level, warm.y * level, warm.z * level);
      // By day nothing of it is seen, and nothing is drawn.
      group.visible = level > 0.05;
    },
    dispose: () => {
      clear();
      material.dispose();
    },
  };
};
