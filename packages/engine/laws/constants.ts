/** Standard acceleration of free fall, m/s², exact (3rd CGPM, 1901). */
export const GRAVITY = 9.80665;

/** Boltzmann constant, J/K, exact (SI, 2019). */
export const BOLTZMANN = 1.380649e-23;
