/** How the filter stands about the tank, all in metres from the tank's water surface; holes where there are some. */
export interface Placing {
  /** Highest point of the hoses above the surface. */
  readonly humpM: number;
  /** Lid of the housing and pump below the surface; below 0 where they stand above it. */
  readonly lidDepthM: number;
  /** Mouth of the intake below the surface. */
  readonly intakeDepthM: number;
  /** Air hole in the intake below the surface. */
  readonly intakeHoleM?: number;
  /** Mouth of the return below the surface; 0 where it is free. */
  readonly returnDepthM: number;
  /** Air hole in the return below the surface. */
  readonly returnHoleM?: number;
  /** Rise of the surface above the edge that it runs over into a sump, while the pump runs; absent without a sump. */
  readonly surfaceRiseM?: number;
  /** Water that sump or tray can take up, m³. */
  readonly spareM3?: number;
}
