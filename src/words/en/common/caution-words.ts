/** Cautions, shown once where the step is. They defer to local rules and qualified people. */
export const cautionWords = {
  smallParts:
    'For a child under three a part this small can choke: follow your local rules and ask a qualified tester before selling.',
  cords:
    'Ties and cords on children’s clothes can catch and strangle: follow your local rules and ask a qualified tester before selling.',
  shears:
    'Keep the hand that holds the cloth away from the blades; close them when you lay them down.',
  pins: 'Pins at the marks come out before the needle reaches them: a needle that strikes a pin can break and fly. Try chalk on a scrap first.',
  blades:
    'Clip and trim with the points away from the hand that holds the cloth; never cut towards it.',
};
