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
    // x: 1 lit, 0 flat. y: how much of the shop it mirrors. z: how sharply.
    nature: vec4<f32>,
}

@group(#{MATERIAL_BIND_GROUP}) @binding(0) var<uniform> finish: Finish;

const LAMP: vec3<f32> = vec3<f32>(-0.448, 0.611, 0.652);
const FILL: vec3<f32> = vec3<f32>(0.870, 0.097, 0.483);

// What steel mirrors by height of the direction: dark floor, grey walls, bright ceiling.
fn shop(height: f32) -> f32 {
    return mix(mix(0.02, 0.16, smoothstep(-0.8, 0.05, height)), 0.62, smoothstep(0.05, 0.95, height));
}

@fragment
fn fragment(in: VertexOutput) -> @location(0) vec4<f32> {
    var base = finish.color.rgb;
#ifdef VERTEX_COLORS
    base = in.color.rgb;
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
    let light = 0.26 + 0.34 * sky + 1.30 * max(dot(normal, LAMP), 0.0) + 0.30 * max(dot(normal, FILL), 0.0);
    let mirrored = reflect(-to_eye, normal);
    let lamp = pow(max(dot(mirrored, LAMP), 0.0), finish.nature.z);
    let grazing = pow(1.0 - max(dot(normal, to_eye), 0.0), 4.0);
    let shine = finish.nature.y * ((0.55 + 0.45 * grazing) * shop(mirrored.y) + 0.95 * lamp);
    return vec4<f32>(base * light + vec3<f32>(shine), 1.0);
}
