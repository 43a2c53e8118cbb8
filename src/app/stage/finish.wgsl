// The finish of what stands on the stage: steel, paste, dark lines, or one flat colour.
//
// Everything is reckoned on the sheet: x to the right, y up, z toward the eye. The lamp stands over the left shoulder
// of whoever looks, as on a drawing, and goes along when the eye goes round. Only arithmetic, so that it is cheap on a
// processor and nearly the same on every driver.

#import bevy_pbr::forward_io::VertexOutput
#import bevy_pbr::mesh_view_bindings::view

struct Finish {
    // Linear colour.
    color: vec4<f32>,
    // x: 1 lit, 0 flat. y: how much of the shop it mirrors. z: how sharply. w: how clearly paste was pressed away; below 0
    // there is none.
    nature: vec4<f32>,
    // Linear colours of paste and of the ridge round a print.
    paste: vec4<f32>,
    ridge: vec4<f32>,
}

@group(#{MATERIAL_BIND_GROUP}) @binding(0) var<uniform> finish: Finish;
// Gap as a share of twice the film, from toe to heel and from root to top.
@group(#{MATERIAL_BIND_GROUP}) @binding(1) var left: texture_2d<f32>;
@group(#{MATERIAL_BIND_GROUP}) @binding(2) var left_sampler: sampler;

const LAMP: vec3<f32> = vec3<f32>(-0.448, 0.611, 0.652);
const FILL: vec3<f32> = vec3<f32>(0.870, 0.097, 0.483);

// What steel mirrors by height of the direction: dark floor, grey walls, bright ceiling.
fn shop(height: f32) -> f32 {
    return mix(mix(0.02, 0.16, smoothstep(-0.8, 0.05, height)), 0.62, smoothstep(0.05, 0.95, height));
}

// How much of what is seen is paste, from the gap as a multiple of the film: pressed thin the steel shines through, at the
// edge of the print the film begins.
fn covered(gap: f32, edge: f32) -> f32 {
    let pressed = 0.42 * clamp(gap, 0.0, 1.0) * clamp(gap, 0.0, 1.0);
    let print = mix(pressed, 1.0, smoothstep(1.0 - edge, 1.0 + edge, gap));
    return mix(1.0, print, finish.nature.w);
}

@fragment
fn fragment(in: VertexOutput) -> @location(0) vec4<f32> {
    var base = finish.color.rgb;
#ifdef VERTEX_COLORS
    base = in.color.rgb;
#endif
    var mirrors = finish.nature.y;
    var matt = 0.0;
#ifdef VERTEX_UVS_A
    if finish.nature.w >= 0.0 {
        let gap = 2.0 * textureSample(left, left_sampler, in.uv).r;
        let edge = clamp(0.7 * fwidth(gap), 0.004, 0.2);
        if finish.nature.x < 0.5 {
            // Flat: paste or steel and nothing between.
            let paste = finish.nature.w < 0.5 || gap >= 1.0;
            return vec4<f32>(select(base, finish.paste.rgb, paste), 1.0);
        }
        let paste = covered(gap, edge);
        let at_edge = smoothstep(1.0 - edge, 1.0 + edge, gap) * (1.0 - smoothstep(1.05, 1.22, gap));
        let film = mix(finish.paste.rgb, finish.ridge.rgb, 0.8 * at_edge * finish.nature.w);
        base = mix(base, film, paste);
        mirrors = mirrors * (1.0 - 0.9 * paste);
        matt = paste;
    }
#endif
    if finish.nature.x < 0.5 {
        return vec4<f32>(base, 1.0);
    }
    let normal = normalize((view.view_from_world * vec4<f32>(in.world_normal, 0.0)).xyz);
    var to_eye = vec3<f32>(0.0, 0.0, 1.0);
    if view.clip_from_view[3].w < 0.5 {
        to_eye = -normalize((view.view_from_world * vec4<f32>(in.world_position.xyz, 1.0)).xyz);
    }
    let sky = 0.5 + 0.5 * normal.y;
    let plain = 0.26 + 0.34 * sky + 1.30 * max(dot(normal, LAMP), 0.0) + 0.30 * max(dot(normal, FILL), 0.0);
    // Paste keeps its colour in the light.
    let light = mix(plain, 1.1 * plain / (1.0 + 0.45 * plain), matt);
    let mirrored = reflect(-to_eye, normal);
    let lamp = pow(max(dot(mirrored, LAMP), 0.0), finish.nature.z);
    let grazing = pow(1.0 - max(dot(normal, to_eye), 0.0), 4.0);
    let shine = mirrors * ((0.55 + 0.45 * grazing) * shop(mirrored.y) + 0.95 * lamp);
    return vec4<f32>(base * light + vec3<f32>(shine), 1.0);
}
