/**
 * Of 100 vegetable seeds sold between states, the least that germinate. United States Code of Federal Regulations,
 * title 7, section 201.31 (59 FR 64491, 14 December 1994); read whole in a copy at law.lawstack.com.
 */
export const GERMINATION_OF_100: Readonly<Record<string, number>> = {
  Citron: 65,
  Cucumber: 80,
  Melon: 75,
  Pumpkin: 75,
  Squash: 75,
  Tomato: 75,
  Watermelon: 70,
};
