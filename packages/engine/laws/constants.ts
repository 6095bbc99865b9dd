/** Standard acceleration of free fall, m/s², exact (3rd CGPM, 1901). */
export const GRAVITY = 9.80665;

/** Boltzmann constant, J/K, exact (SI, 2019). */
export const BOLTZMANN = 1.380649e-23;

/** 0 °C, K, exact (ITS-90). */
export const ICE_POINT_K = 273.15;

/** Standard atmosphere, Pa, exact (10th CGPM, 1954). */
export const STANDARD_ATMOSPHERE_PA = 101_325;
