/** The usual cautions of the work, and to whom all this gives way. */
export const safety = {
  heading: "Cautions of the work",
  items: [
    "Stop the engine, take the key and wait until everything stands still before reaching near meters, chains, shafts or fans. Never slow a part by hand or with a stick.",
    "A motor-driven meter can start by itself: nobody at the outlet until the person at the switch says so. No loose clothing, hair or gloves near drives.",
    "Energy stays stored: block raised frames and lifted wheels, chock, relieve hydraulic pressure (a leak can inject oil through skin), and let a pressurised bin vent before opening a lid.",
    "Fan and exhaust are hot and loud: protect eyes and ears.",
    "Treated seed: read the tag, wear what it asks for, keep dust away from you and from bees, and keep caught seed out of food and feed.",
    "Dust of grain and fertiliser irritates eyes and lungs, and salts burn cuts: gloves, eye protection, a fitting respirator.",
    "Never enter a bin while product can move: a person is trapped in seconds. Work from outside with a pole; entry is a confined-space job for trained people.",
    "Bags are heavy: share the lift or use a machine, and nobody under a hung bag.",
    "On the move: lights, width, secured lids and ladders, no riders. Pick up spills; they harm animals and water.",
  ],
  deferral:
    "This report is arithmetic on your own weighings. The machine's operator's manual, the product label and seed tag, local law and codes, and qualified people come first; where they differ from this, follow them.",
};
