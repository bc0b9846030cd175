/**
 * Fog and sky as one light. Method: Koschmieder's law, contrast falls as exp(-3.912 x / visibility) (WMO-No. 8, the 2 %
 * definition of visibility taken as 3.912), over the distance from the eye; what is taken away is replaced by the light that
 * the air itself sends from that direction, so far things fade into exactly the sky behind them.
 */
import { FogExp2, ShaderChunk } from 'three';
import { installSun } from './sun.ts';

/** Extinction of the air, per metre, at a meteorological visibility. */
export const extinction = (visibilityM: number): number => 3.912 / visibilityM;

/** GLSL: light of the air from a direction, for a colour at the horizon away from the sun. */
export const airlightGlsl = `
uniform vec4 sunWay;
vec3 airlight(vec3 base, vec3 d) {
  float s = max(dot(d, sunWay.xyz), 0.0);
  float high = smoothstep(-0.15, 0.95, d.z);
  vec3 c = base * (0.84 + 0.3 * high);
  c *= mix(vec3(1.0), vec3(1.5, 1.22, 0.98), pow(s, 2.6) * min(1.0, sunWay.w));
  c += base * vec3(0.55, 0.27, 0.06) * pow(s, 12.0) * sunWay.w;
  return c * (1.0 - 0.22 * smoothstep(0.0, -0.35, d.z));
}`;

let installed = false;

/** Puts this fog in the place of the renderer's own; once a page. */
export const installAirlight = (): void => {
  if (installed) return;
  installed = true;
  installSun();
  ShaderChunk.fog_pars_vertex = `
#ifdef USE_FOG
  varying float vFogDepth;
  varying vec3 vFogWay;
#endif`;
  ShaderChunk.fog_vertex = `
#ifdef USE_FOG
  vFogDepth = length(mvPosition.xyz);
  vFogWay = transpose(mat3(viewMatrix)) * mvPosition.xyz;
#endif`;
  ShaderChunk.fog_pars_fragment = `
#ifdef USE_FOG
  uniform vec3 fogColor;
  uniform float fogDensity;
  varying float vFogDepth;
  varying vec3 vFogWay;
  ${airlightGlsl}
#endif`;
  // Light adds up before tone mapping, so the fog is laid on there and not where the renderer usually does.
  ShaderChunk.opaque_fragment += `
#ifdef USE_FOG
  // In dim light the eye loses colour.
  float shade = dot(gl_FragColor.rgb, vec3(0.3, 0.55, 0.15));
  float kept = clamp(0.42 + 1.5 * dot(fogColor, vec3(0.333)) + smoothstep(0.2, 0.6, shade), 0.0, 1.0);
  gl_FragColor.rgb = mix(vec3(shade), gl_FragColor.rgb, kept);
  float fogFactor = 1.0 - exp(-fogDensity * vFogDepth);
  gl_FragColor.rgb = mix(gl_FragColor.rgb, airlight(fogColor, normalize(vFogWay)), fogFactor);
#endif`;
  ShaderChunk.fog_fragment = '';
};

/** Fog whose density is an extinction per metre and whose colour stays linear on its way to the shader. */
export const fogOf = (): FogExp2 => {
  const fog = new FogExp2(0x9aa4ad, extinction(160));
  fog.color.getRGB = (target) => {
    target.r = fog.color.r;
    target.g = fog.color.g;
    target.b = fog.color.b;
    return target;
  };
  return fog;
};
