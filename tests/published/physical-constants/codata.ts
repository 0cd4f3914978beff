/** The constant of Stefan and Boltzmann, W a m² and K to the fourth. CODATA 2018. From memory. */
export const STEFAN_BOLTZMANN_W = 5.670374e-8;
