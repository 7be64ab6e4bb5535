# Parts of a dish whose names look like a form of a verb (dressing, filling). They stand in a file of their own,
# before actions.lex, because as nouns they are the likelier reading. SPDX-License-Identifier: MIT
@tag PART
@forms noun
@marks
dressing
topping	topping		crumb topping | crumble topping | streusel topping | streusel
filling	filling
icing	icing		buttercream | buttercream icing | cream cheese icing
frosting	frosting		buttercream frosting | cream cheese frosting
coating	coating		breading | dredging mixture | flour dredge
brine	brine		pickling liquid | pickling brine | pickle liquid
batter	batter		pancake batter | cake batter
paste	paste		spice paste

@tag FOOD
@marks uncounted
stuffing	stuffing		sage and onion stuffing
seasoning	spice	generic
