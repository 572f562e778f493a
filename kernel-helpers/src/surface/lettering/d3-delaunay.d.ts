// The package's types are a package of their own, which would cost the kernel time at every start.
declare module 'd3-delaunay' {
  export class Delaunay {
    constructor(points: Float64Array);
    readonly triangles: Uint32Array;
    readonly halfedges: Int32Array;
  }
}
