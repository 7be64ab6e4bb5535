# Vessels, ovens, tools, places, heat, sizes, states, manners, parts of dishes, dishes, eaters.
# SPDX-License-Identifier: MIT

@tag VESSEL
@forms noun
@marks wet
pot			big pot | large pot | soup pot | small pot | cooking pot | heavy bottomed pot | heavy pot
stockpot			stock pot
dutch oven			french oven
casserole dish			casserole pot | casserole pan
saucepan			sauce pan | small saucepan | milk pan | heavy bottomed saucepan | large saucepan | medium saucepan | heavy saucepan
pan			big pan | large pan | heavy pan | heavy bottomed pan
tagine
kettle
double boiler			bain marie | water bath
steamer			steamer basket | bamboo steamer | steaming basket
slow cooker			crockpot | crock pot
pressure cooker			instant pot | electric pressure cooker | multicooker
rice cooker
deep fryer			deep fat fryer | fryer
fondue pot
canning pot
preserving pan			jam pan
@marks wet fries
skillet			cast iron skillet | cast iron pan | cast iron | large skillet | iron skillet | nonstick skillet | heavy skillet | electric skillet
frying pan			fry pan | frypan | the nonstick | a nonstick | my nonstick | the non stick | a non stick | nonstick pan | non stick pan | non stick frying pan | nonstick frying pan | large frying pan | omelette pan | crepe pan | carbon steel pan
saute pan
wok			kadai | karahi | kawali
griddle pan			grill pan | griddle | flat top | tawa | comal
paella pan
@marks
bowl			mixing bowl | large bowl | big bowl | small bowl | medium bowl | separate bowl | metal bowl | glass bowl | salad bowl | heatproof bowl | stand mixer bowl | shallow bowl | mixer bowl | serving bowl
baking sheet		ovens	sheet pan | cookie sheet | half sheet pan | sheet tray | baking tray | oven tray | tray | sheet pan tray | flat tray | rimmed baking sheet | cookie tray | quarter sheet pan | lined tray
baking dish		ovens	baking pan | oven dish | ovenproof dish | gratin dish | lasagna dish | glass baking dish | pyrex dish | pyrex | ovenproof pan | shallow dish | shallow baking dish
roasting tin		ovens	roasting pan | roasting tray | roaster | roasting dish | oven tin
cake pan		ovens	cake tin | springform pan | springform tin | round pan | round tin | square pan | square tin | sandwich tin | baking tin | jelly roll pan | swiss roll tin | springform | springform cake tin
loaf pan		ovens	loaf tin | bread tin | bread pan
muffin tin		ovens	muffin pan | muffin tray | cupcake tin | cupcake pan | bun tin | mini muffin tin | cupcake tray | muffin cup
bundt pan		ovens	bundt tin | tube pan
pie dish		ovens	pie plate | pie pan | pie tin
tart pan		ovens	tart tin | flan tin | quiche dish | flan dish | quiche pan
ramekin		ovens	custard cup | pudding basin | pudding bowl | souffle dish | ramekin dish
pizza stone			baking stone | baking steel | pizza steel | pizza pan
popsicle mold
ice cube tray
mold			mould | jelly mould | cookie mold
plate			platter | serving plate | serving platter | dinner plate | paper plate | side plate
dish			serving dish
board			cutting board | chopping board | wooden board | pastry board | bread board
glass			tall glass | tumbler | cocktail glass
mug
jug			measuring jug | pitcher | measuring cup
blender			food processor | processor | liquidizer | liquidiser | mini chopper | blender jug | high speed blender | bullet blender
mixer			stand mixer | hand mixer | electric mixer | standing mixer | table mixer | kitchen mixer
thermos
cooler
freezer bag			zip bag | zip lock bag | zip top bag | ziplock | ziplock bag | plastic bag | resealable bag | resealable plastic bag | sandwich bag | zipper bag
piping bag			pastry bag
storage container			airtight container | plastic container | sealed container | tupperware
mason jar			glass jar | kilner jar | sterilised jar | sterilized jar
proofing basket			banneton | proving basket
colander			strainer | sieve | fine mesh sieve | fine sieve | fine mesh strainer | salad spinner
cooling rack			wire rack | roasting rack | oven rack
mortar			mortar and pestle | pestle and mortar | molcajete
sink
bucket
basin
crock
terrine
lid			tight fitting lid

@tag OVEN
oven		ovens	main oven | convection oven | toaster oven | fan oven | pizza oven | wood oven | wood fired oven | hot oven | moderate oven | low oven | slow oven | warm oven | preheated oven
dial	oven		oven dial | gauge | temperature gauge | thermostat
broiler	grill	grills	hot grill | overhead grill | gas grill | charcoal grill | top grill | salamander
barbecue		grills	the grate | grill grate | grates | straight on the fire | straight on the flame | straight on the gas | straight on the gas flame | over the open flame | bbq | hot side | cool side | hot part | cool part | hot end | cool end | barbeque | braai | coals | hot coals | charcoal | smoker
fire	barbecue		open fire | fire pit | embers | hot embers | naked flame | open flame | gas flame | bare flame
stove			hob | stovetop | stove top | burner | cooktop | gas stove | cooker | flame | induction hob | back burner | hot plate
microwave		ovens	microwave oven | micro wave | micro wave oven
air fryer		ovens
dehydrator
toaster
waffle iron			waffle maker
sandwich press			panini press
bread machine			bread maker
ice cream maker			ice cream machine | churner
sous vide machine	immersion circulator		immersion circulator | sous vide bath

@tag TOOL
knife			sharp knife | chef's knife | chefs knife | paring knife | bread knife | serrated knife | carving knife | butter knife | palette knife | table knife | cleaver
fork
spoon			wooden spoon | metal spoon | slotted spoon | serving spoon | perforated spoon | large spoon | measuring spoon | soup spoon
balloon whisk	whisk		wire whisk | electric whisk | egg beater | hand whisk | beaters
spatula			rubber spatula | fish slice | offset spatula | silicone spatula | turner | bench scraper | dough scraper | scraper | bowl scraper
tongs
ladle
spider			skimmer
peeler			vegetable peeler | speed peeler | y peeler
grater			box grater | microplane | zester | cheese grater | fine grater
mandoline			mandolin
masher			potato masher | ricer | potato ricer
garlic press			garlic crusher
can opener			tin opener
rolling pin
cookie cutter			biscuit cutter | round cutter | pastry cutter | cutter | pizza cutter | pizza wheel
ice cream scoop
cookie scoop
melon baller
scissors			kitchen scissors | kitchen shears | shears
pastry brush	brush		basting brush
thermometer	inside		meat thermometer | instant read thermometer | probe thermometer | sugar thermometer | candy thermometer | oven thermometer | probe | temperature probe
scale			kitchen scale | digital scale | scales
timer
wooden skewer	skewer		bamboo skewer | metal skewer | cocktail stick | toothpick | tooth pick | cake tester
foil			aluminum foil | tin foil | aluminium foil | kitchen foil | tinfoil
parchment paper			paper | baking paper | greaseproof paper | baking parchment | parchment | wax paper | waxed paper | silicone mat | silpat | greaseproof
plastic wrap			cling film | clingfilm | saran wrap | cling wrap | glad wrap
paper towel			kitchen paper | kitchen roll | kitchen towel | absorbent paper
tea towel			dish towel | cloth | clean cloth | damp cloth | damp towel | towel | dish cloth
cheesecloth			muslin | muslin cloth
twine			string | kitchen string | butcher's twine | kitchen twine | butchers twine
gloves			oven glove | oven mitt | rubber gloves
piping nozzle			nozzle | piping tip
chopstick
meat mallet			mallet | meat tenderizer
juicer			citrus press | lemon squeezer | reamer
immersion blender			stick blender | hand blender | immersion stick
dough hook			paddle attachment | whisk attachment | paddle | bread hook
muffin case			paper case | cupcake case | cupcake liner | muffin liner | paper liner | cupcake paper
baking beans			pie weights | baking weights
blowtorch			blow torch | kitchen torch
pasta machine			pasta roller | pasta maker
spice grinder			coffee grinder | pepper mill | pepper grinder
apron
pizza peel
funnel
basting bulb	baster		turkey baster
wood chips
popsicle stick			lolly stick
spray bottle
splatter guard			splatter screen
cookbook			recipe book

@tag PLACE
inside			reads | registers | it hits | they hit | they reach | it gets to | they get to | it comes up to | they come up to | it comes to | needs to hit | has to hit | should hit | hits | thickest part | thickest point | thickest bit | thick part | thick end | thick bit | fattest part | fattest bit | fat part | deepest part | deepest bit | internal | internally | internal temperature | core temperature | inside temperature | in the center | in the middle | in the centre
center			centre | middle
outside			edges | edge | rim | outer edge | border
surface			top side
bottom			underside
fridge		cold	refrigerator | icebox | cold box | the cold
freezer		cold	deep freeze
counter			countertop | counter top | worktop | work surface | kitchen counter | bench | kitchen bench | work bench | floured surface | floured counter | lightly floured surface
table
shelf		ovens	middle shelf | top shelf | bottom shelf | center rack | middle rack | top rack | bottom rack | lower shelf | lower rack
warm place			warm spot | draft free place | draught free place | airing cupboard | windowsill
cool place			cool dark place | pantry | larder | cupboard
window
@forms none
shelves	shelf	plural

@tag HEAT
@marks
temperature	heat		temp
@forms none
medium heat	medium		medium | moderate heat | moderate | a medium heat | medium flame | mid heat | middle heat
high heat	high		high | a high heat | full heat | full blast | as hot as it goes | maximum heat | screaming hot | ripping hot | full whack | fierce heat | strong heat | big heat | high flame | really high heat | full power
low heat	low		low | a low heat | gentle heat | a gentle heat | low flame | lowest heat | very low heat | the lowest heat | low and slow | barely on | lowest setting | small flame
medium high heat	medium-high		medium high | medium to high heat | medium to high | a medium high heat | medium hot | moderately high heat | moderately high | medium high flame | mid to high heat
medium low heat	medium-low		medium low | low to medium heat | medium to low heat | medium to low | low medium | low to medium | low medium heat | a medium low heat | moderately low heat
residual heat	residual		carryover heat | indirect heat | direct heat

@tag SIZE
@forms none
large			big | good size | good sized | larger | jumbo | huge | giant | largish | biggish | decent sized | fist sized
small			little | tiny | wee | smaller | smallish | mini | teeny | baby
medium			medium sized | medium size | average | average sized | regular sized
extra large			xl | very large
nests of			nest of | cakes of | bundles of dried

@tag STATE
@forms none
cold		prep	ice cold | stone cold | fridge cold | really cold | very cold | cold from the fridge | straight from the fridge | straight out of the fridge | well chilled
room temperature		prep	at room temperature | room temp | at room temp | come to room temperature
lukewarm		prep	tepid | hand hot | blood temperature | body temperature | slightly warm | hand warm
hot		prep	piping hot | boiling hot | just boiled
fresh			freshly picked | garden fresh | in season
ripe			very ripe | just ripe | overripe | over ripe | really ripe
unripe			underripe | firm ripe
raw			uncooked
ready cooked	cooked		fully cooked | leftover
frozen
dried			sun dried
canned			tinned | jarred | bottled
salted
unsalted			no salt added | no added salt
unsweetened			sugar free
low sodium	low-sodium		reduced sodium | low salt | reduced salt
low fat	low-fat		reduced fat | fat free | nonfat | non fat | light | lite | semi skimmed
full fat	full-fat
lean			extra lean
fatty
boneless			bone out
bone in	bone-in		on the bone
skinless
skin on	skin-on		with the skin on
boneless skinless			skinless boneless
bone in skin on	bone-in skin-on		skin on bone in
seedless
whole
firm
soft	softened	prep
tender			fork tender
crisp			crispy | crunchy
crusty
stale			day old | days old | yesterday's | last night's | two day old | a day old
thick			thick cut
thin			thin cut
coarse			coarsely ground
fine
smooth
chunky
creamy
sweet
sour			tart | tangy
bitter
spicy
mild
strong
plain
organic			free range | grass fed | pasture raised
homemade			home made
store bought	store-bought		shop bought | ready made
good quality	good-quality		best quality | award winning | prize winning | world famous | high quality | decent | nice
extra virgin
golden			golden brown | lightly golden | light golden | deep golden | golden and crisp | light brown | nutty brown
dark brown	brown
white
red
green
yellow
purple
black
pink
dark
translucent			see through | glassy
opaque
fragrant			aromatic
puffy
crumbly
watery
salty
floppy
wobbly
bubbly	bubbling
fluffy			light and fluffy | pale and fluffy
sticky
shiny			glossy
foamy			frothy
stiff
juicy
wet			damp
al dente
done		serves	ready | cooked through
rare
medium rare
gluten free	gluten-free
dairy free	dairy-free		lactose free | non dairy
vegan			vegetarian | plant based
old
young
floury
waxy
leafy
flat leaf	flat-leaf
heirloom
wild
farmed
flaky
powdered
instant
quick cook	quick-cook		quick cooking
long grain	long-grain
short grain	short-grain
wholegrain	whole-grain		whole grain | wholemeal
loose
runny
silky
tough
dense
light and airy	light
plump
bite size	bite-size		bite sized
oven ready	oven-ready
heatproof
nonstick			non stick
clear
rich
unpeeled			skins on
undrained
unbleached

@tag MANNER
@forms none
@marks
finely			very finely | super finely | nice and fine | really finely | nice and finely
thinly			very thinly | really thinly | nice and thin | as thin as you can | paper thin
roughly			nice and rough
coarsely			nice and coarse
thickly
without colour			without color | without any colour | without any color | no colour | no color | no colour at all | no color at all | no colour on them | no color on them | no colour on it | no color on it
gently			very gently | carefully | slowly | lightly | softly | delicately | nice and slow | nice and gently | nice and gentle
vigorously			hard | energetically | rapidly | briskly | fast
well			very well | really well | thoroughly | good and well | completely | fully | properly | nicely | all the way | all the way through
evenly			even | uniformly | in an even layer | in one layer | in a single layer
freshly			fresh ground
quickly			quick | briefly
constantly			continuously | all the time | nonstop
occasionally			from time to time | every now and then | now and then | every so often | once in a while | now and again | frequently | often
gradually			little by little | bit by bit | a little at a time | a bit at a time | in a thin stream | in a steady stream | one at a time | one by one | in batches | in stages
generously			liberally | heavily
diagonally			on the diagonal | on the bias | on a bias | crosswise | crossways | lengthwise | lengthways | long ways | longways | on the slant | slanted | slantwise | slantways | at a slant | on an angle | at an angle | on a slant | across the grain | against the grain | widthwise
loosely
tightly
firmly
partially			partly
together
separately
immediately			right away | straight away
barely
slightly
simply

# --- parts made within a dish ---
# Not a length of time, but later.
in a minute			in a second | in a sec | in a moment | in just a minute | in a wee minute

@tag PART
@forms noun
@marks
sauce			pan sauce | cream sauce | dipping sauce | butter sauce | wine sauce
marinade
dough			pasta dough | tart dough | pastry dough
mixture			egg mixture | flour mixture | milk mixture | butter mixture | meat mixture | sugar mixture | cream mixture | dry mixture | wet mixture | chicken mixture | cheese mixture | chocolate mixture | yeast mixture | onion mixture | potato mixture | vegetable mixture | beef mixture | rice mixture | crumb mixture | tomato mixture | apple mixture | dry mix | wet mix
crust			bottom crust | top crust
base			biscuit base | soup base | flavor base | flavour base | shortbread base
crumb			crumb coating
slurry			cornflour slurry | starch slurry
roux
pastry			pastry lid
meringue
ganache
pastry cream	custard		custard base | creme patissiere
slaw
liquid			wet ingredients | wet ingredient | cooking liquor | braising liquid | liquor | juices | poaching liquid
dry ingredients			dry ingredient | dry stuff | dry goods
solids
meatball mixture
meatballs
patty
sponge
foam
seasoned flour	spice mix
water bath			ice bath
shell
stuffing mixture	stuffing
tadka	tempering		tarka | chaunk
bouquet	bouquet garni
sides	side	plural		none

# --- dishes ---
@tag DISH
@forms noun
@marks
beef stew	stew		lamb stew | fish stew | chicken stew | vegetable stew | hotpot | hot pot | lancashire hotpot | irish stew | pork stew | seafood stew
soup			chicken soup | noodle soup | chicken noodle soup | vegetable soup | lentil soup | pea soup | split pea soup | potato soup | onion soup | mushroom soup | pumpkin soup | squash soup | leek soup | fish soup | bean soup | egg drop soup | wedding soup | hot and sour soup | broccoli soup | potato leek soup | leek and potato soup | cabbage soup | carrot soup | cauliflower soup | tortilla soup | corn soup | barley soup
chowder			clam chowder | corn chowder | fish chowder | seafood chowder
bisque			lobster bisque
gazpacho		names
borscht		names
minestrone		names
goulash			goulash soup
chili con carne	chili		chilli con carne | white chicken chili | turkey chili | bowl of chili | pot of chili | vegetarian chili
gumbo		names
jambalaya		names
ramen bowl
pho		names
laksa		names
tom yum		names	tom kha | tom kha gai
congee		names	jook
ajiaco		names
pozole		names
menudo		names
cioppino		names
bouillabaisse		names
cassoulet		names
ratatouille		names
pot au feu		names
blanquette		names
coq au vin		names
beef bourguignon		names	boeuf bourguignon
ragu			bolognese | spaghetti bolognese | meat ragu | lamb ragu
stroganoff			beef stroganoff | mushroom stroganoff
curry			chicken curry | green curry | red curry | thai curry | vegetable curry | lamb curry | fish curry | beef curry | chickpea curry | katsu curry | butter chicken | tikka masala | chicken tikka masala | korma | vindaloo | rogan josh | massaman curry | madras | jalfrezi | balti | prawn curry | potato curry | lentil curry | coconut curry | egg curry | saag paneer | palak paneer | chana masala | aloo gobi | dopiaza | bhuna | dhansak | rendang | beef rendang
tarka dal	dal		dal makhani
biryani			chicken biryani
pilaf			pilau | pulao | rice pilaf
paella
risotto			mushroom risotto
fried rice			egg fried rice | nasi goreng
rice bowl			bowl meal | grain bowl | poke bowl | buddha bowl | donburi
bibimbap		names
sushi			sushi roll | maki | sashimi | nigiri
chicken stir fry	stir-fry		beef stir fry | vegetable stir fry
pad thai		names
chow mein		names
kung pao chicken		names
general tso chicken		names
sweet and sour pork			sweet and sour chicken
orange chicken
mapo tofu		names
teriyaki chicken			chicken teriyaki
tempura
okonomiyaki		names
yakitori		names
japchae		names
bulgogi		names
satay			chicken satay | satay skewers
spring roll			egg roll | summer roll
dumpling			potsticker | gyoza | soup dumpling | jiaozi | momo
dim sum
banh mi		names
larb		names
chicken adobo	adobo
kofta			kofte
kebab			kabob | shish kebab | souvlaki | shashlik | brochette
shawarma			doner | gyro
falafel
shakshuka		names
moussaka		names
spanakopita		names
dolma			stuffed grape leaves
fattoush		names
tabbouleh		names
fattah		names
mezze
couscous salad
taco			fish taco | beef taco
burrito			burrito bowl
enchilada			chicken enchiladas
quesadilla
fajita			chicken fajitas
nachos
tamale
empanada
arepa
ceviche		names
tostada
chilaquiles		names
huevos rancheros		names
carnitas		names
barbacoa		names
birria		names
feijoada		names
pupusa
chimichanga
taquito			flauta
elote		names
burger			cheeseburger | veggie burger | slider | bean burger | beef burger | chicken burger
sandwich			toastie | grilled cheese | grilled cheese sandwich | sub | club sandwich | panini | hoagie | cheesesteak | blt | tuna melt | cheese melt | ham melt | patty melt | croque monsieur | reuben | submarine sandwich | ice cream sandwich
sloppy joe
pizza			margherita | calzone | stromboli | flatbread pizza | pizza pie
avocado toast	toast		french toast | cheese on toast | beans on toast | eggy bread | bruschetta | crostini
welsh rarebit		names	rarebit
pasta dish	pasta		carbonara | spaghetti carbonara | cacio e pepe | pasta bake | fettuccine alfredo | puttanesca | aglio e olio | amatriciana | primavera | pasta salad | one pot pasta | baked ziti | tuna pasta bake | pasta carbonara
lasagna			lasagne
mac and cheese			macaroni cheese | macaroni and cheese | mac n cheese | mac & cheese
tuna casserole
casserole			chicken casserole | green bean casserole | breakfast casserole | bean casserole | hash brown casserole
gratin			potato gratin | dauphinoise | scalloped potatoes | au gratin potatoes
pot pie			chicken pot pie
shepherd's pie			shepherds pie | cottage pie | fish pie
meatloaf			meat loaf
meatball
pot roast
roast dinner	roast		sunday roast | roast lamb | roast pork | roast turkey
roast vegetables			roasted vegetables
schnitzel			katsu | tonkatsu | milanese | chicken kiev | chicken parmesan | chicken parm | cordon bleu | escalope
fried chicken			chicken nugget | popcorn chicken | buffalo wings | hot wings
fish and chips		names
fishcake			crab cake | salmon cake
croquette			arancini
rissole
fritter			corn fritter | zucchini fritter | bhaji | onion bhaji | pakora | hush puppy
samosa
latke			rosti | potato pancake | potato cake | hash
bubble and squeak		names
toad in the hole		names
beef wellington		names	wellington
sausage roll
scotch egg
pasty			cornish pasty
stuffed peppers			stuffed pepper | stuffed tomatoes | stuffed cabbage | cabbage roll | stuffed mushrooms
osso buco		names
carpaccio
tartare			steak tartare
smoked brisket
sauerbraten		names
piroshki
stuffed shells
salad			green salad | kachumber salad | caesar salad | potato salad | greek salad | chicken salad | tuna salad | egg salad | fruit salad | side salad | waldorf salad | nicoise salad | cobb salad | bean salad | quinoa salad | tomato salad | caprese salad | cucumber salad | warm salad | rice salad | noodle salad | beet salad | broccoli salad | macaroni salad | garden salad | house salad | kale salad | spinach salad | lentil salad | orzo salad
kachumber	salad	names	raita | caprese | panzanella
coleslaw
omelette			omelet | spanish omelette | tortilla espanola
frittata
quiche			quiche lorraine
tofu scramble	scramble
eggs benedict		names
deviled eggs			deviled egg
souffle			cheese souffle
pancake			hotcake | buttermilk pancake | american pancakes | blueberry pancakes | dutch baby | pikelet | dosa
overnight oats	porridge		baked oats
smoothie			smoothie bowl
breakfast		generic	brunch | lunch | dinner | supper | appetizer | main course | dessert | side dish | snack | meal
full english		names	full english breakfast
pudding
pie			apple pie | cherry pie | pumpkin pie | pecan pie | meat pie | key lime pie | lemon meringue pie | steak pie | chicken pie | blueberry pie | peach pie | banoffee pie | hand pie | steak and kidney pie | mince pie | custard pie | cream pie | chocolate pie | rhubarb pie | coconut cream pie | strawberry pie | sweet potato pie
tart			tartlet | lemon tart | fruit tart | treacle tart | bakewell tart | custard tart | tarte tatin | onion tart | tomato tart | galette | egg tart | flan | chocolate tart
turnover			apple turnover
cobbler			peach cobbler
crisp			apple crisp | apple crumble | rhubarb crumble | fruit crumble | crumble pudding | brown betty
clafoutis		names
strudel			apple strudel
baklava		names
danish			danish pastry
eclair			profiterole | cream puff | choux bun
mille feuille
cinnamon roll			cinnamon bun | sticky bun | chelsea bun | monkey bread | babka
scone			cheese scone
blueberry muffin	muffin		banana muffin | corn muffin | bran muffin
cupcake			fairy cake
cake			chocolate cake | carrot cake | birthday cake | lemon cake | coffee cake | layer cake | bundt cake | fruit cake | red velvet cake | victoria sponge | lemon drizzle | lemon drizzle cake | gingerbread | gateau | torte | upside down cake | banana cake | swiss roll | yule log | fruitcake | christmas cake | sheet cake | snack cake | apple cake | almond cake | orange cake | pineapple upside down cake | mug cake | lava cake | devil's food cake
cheesecake			baked cheesecake | no bake cheesecake
brownie			blondie
cookie			chocolate chip cookie | sugar cookie | oatmeal cookie | peanut butter cookie | biscotti | snickerdoodle | ginger cookie | macaroon | macaron | anzac biscuit | thumbprint cookie | cutout cookie | bar cookie
shortbread			shortbread bars | millionaire's shortbread
flapjack		names
bars	bars	plural	lemon bars	none
granola bar	bars		energy ball | energy bite | egg bite | cheese bite | brownie bite | cheesecake bite | traybake | cereal bar | lemon bar
chocolate truffles	truffles
semifreddo	ice cream		granita | popsicle | ice lolly | parfait | sundae | milkshake
mousse			chocolate mousse
panna cotta		names
creme brulee		names
creme caramel		names
tiramisu		names
trifle
pavlova
eton mess		names
posset			lemon posset
bread pudding			bread and butter pudding
rice pudding
sticky toffee pudding		names
christmas pudding			steamed pudding
summer pudding		names
custard pudding
churro
beignet	doughnut
fool
junket
syllabub
halwa
gulab jamun		names
kheer		names
mochi
lamington
loaf of bread	bread		white loaf | banana bread | soda bread | zucchini bread | no knead bread | rye loaf | sandwich loaf | milk bread | pumpkin bread | quick bread | irish soda bread | fruit loaf | tea bread | beer bread
hot cross bun	roll		parker house roll
soft pretzel	pretzel
buttermilk biscuit	biscuit		drop biscuit
spinach dip	dip		bean dip | onion dip | artichoke dip | cheese dip | seven layer dip
cocktail			margarita | mojito | martini | sangria | mulled wine | daiquiri
hot chocolate
latte
kombucha
slaw
stuffing
terrine
caponata		names
antipasto
crab boil	seafood boil		seafood boil | crawfish boil | shrimp boil | low country boil
traybake dinner	traybake		sheet pan dinner | tray bake | one pan dinner | one pot meal
lettuce wrap
stuffed squash

# --- dishes known by their own name, by where they are cooked: common practice, no source. One such word is a whole name.
@marks names
# Europe
salmorejo
avgolemono
pasta e fagioli			pasta fazool
ribollita
acquacotta
zuppa toscana
zurek
caldo verde
cullen skink
cock a leekie			cockaleekie
scotch broth
stovies
cranachan
clapshot
colcannon
boxty
fricassee			chicken fricassee
navarin
carbonnade			carbonade
bigos
fabada
cocido
stifado
kleftiko
pastitsio
youvetsi			giouvetsi
gemista			yemista
fasolada
fasolakia
briam
tiropita
keftedes			keftedakia
saganaki
skordalia
melitzanosalata
spanakorizo
kedgeree
bangers and mash
welsh cake
bara brith
parkin			yorkshire parkin | ginger parkin
eccles cake
rock cake			rock bun
bannock			pan bannock
barmbrack
soda farl
pirogi
golabki			holubtsi
kopytka
nalesniki
haluski			halushky
maultaschen
jagerschnitzel
currywurst
rotkohl
kartoffelpuffer
bratkartoffeln
flammkuchen			tarte flambee
pissaladiere
tartiflette
fondue			cheese fondue | chocolate fondue
piperade
brandade
gravadlax
frikadeller			frikadellen
pyttipanna
raggmunk
hasselback potato
smorrebrod
jansson's temptation
rye crisp
kanelbullar
lefse
krumkake
paprikash			chicken paprikash
langos
chebureki
vareniki
syrniki
blintz
solyanka
shchi
olivier salad
khachapuri
khinkali
lobio
satsivi
plov
lahmacun
pide
borek			burek | byrek
gozleme
menemen
imam bayildi
kisir
cacik
simit
patatas bravas
gambas al ajillo
croqueta
escalivada
pan con tomate
peperonata
saltimbocca
piccata			chicken piccata
cacciatore			chicken cacciatore
chicken marsala
porchetta
shrimp scampi
pasta alla norma
arrabbiata			penne arrabbiata
tetrazzini			chicken tetrazzini
panforte
zabaglione			sabayon
affogato
crostata
far breton
financier
madeleine
canele
chop suey
johnny marzetti
rumbledethumps
pease pudding
lobscouse			scouse
pan haggerty			panackelty
stargazy pie
homity pie
cawl
glamorgan sausage
crempog
teisen lap
clootie dumpling
skirlie
fadge
stottie cake
singing hinny
sally lunn
spotted dick
jam roly poly			roly poly
knickerbocker glory
arctic roll
battenberg			battenberg cake
simnel cake
queen of puddings
coronation chicken
beef olives
mulligatawny
cauliflower cheese
rocky road
daube
choucroute garnie			choucroute
croque madame
gougeres
pain perdu
celeri remoulade			celeriac remoulade
salade lyonnaise
quenelle
ile flottante			floating island
riz au lait
crepe suzette			crepes suzette
gateau basque
kouign amann
pithivier
paris brest
religieuse
buche de noel
galette des rois
vichyssoise
aligot
vitello tonnato
involtini
spezzatino
bollito misto
pappa al pomodoro
pasta al forno
pasta e ceci
pasta e patate
bagna cauda
farinata
piadina
cantucci
zeppole
cannoli
sfogliatelle
struffoli
castagnaccio
torta della nonna
torta caprese
fritto misto
parmigiana			eggplant parmesan | eggplant parmigiana | aubergine parmigiana | melanzane alla parmigiana
risi e bisi
brasato
torrijas
tortilla de patatas
pisto
caldo gallego
albondigas
ajoblanco			ajo blanco
fideua
bunuelo
polvorones
arroz negro
arroz al horno
bacalhau a bras
cataplana
francesinha
pastel de nata			pasteis de nata
arroz doce
caldeirada
kaiserschmarrn
kasespatzle			kaesespaetzle
tafelspitz
wiener schnitzel
rote grutze
kartoffelsalat
semmelknodel
konigsberger klopse
eintopf
labskaus
zwiebelkuchen
pfannkuchen
apfelstrudel
sachertorte
linzer torte
stollen
lebkuchen
vanillekipferl
bircher muesli			birchermuesli
zopf
kottbullar
semla
kladdkaka
princess cake
lohikeitto
karjalanpiirakka			karelian pie | karelian pasty
korvapuusti
pulla
uunipuuro
rieska
kalakukko
farikal
lapskaus
raspeball
sveler
rommegrot
risalamande			ris a la mande
aebleskiver			ebleskiver
rugbrod
kjotsupa
plokkfiskur
stamppot
hutspot
erwtensoep
bitterballen
poffertjes
oliebollen
pannenkoeken
boterkoek
stroopwafel
hachee
waterzooi
stoofvlees
moules frites
appeltaart
barszcz
kapusniak
placki ziemniaczane			placki
makowiec
sernik
paczki
faworki
pierniki
mizeria
zapiekanka
svickova
bramboraky
kulajda
porkolt
gulyas
dobos torte
turos csusza
mititei
sarmale
ciorba
papanasi
cozonac
banitsa
shopska salad
tarator
kavarma
cevapi			cevapcici
pljeskavica
sarma
gibanica
djuvec
palacinke
potica
kremsnita
cepelinai
saltibarsciai
kugelis
varenyky
pampushky
deruny
banosh
nalysnyky
syrnyky
kutia
okroshka
rassolnik
draniki
kulebyaka
pirozhki
vatrushka
medovik
oladi
kholodets
chakhokhbili
chakapuli
ajapsandali
badrijani			badrijani nigvzit
pkhali
kharcho
lobiani
mercimek corbasi
iskender kebab			iskender
karniyarik
hunkar begendi
acili ezme			ezme
cilbir
mucver
sigara boregi
pilav
cig kofte
sutlac
kunefe
pogaca
kuru fasulye
gigantes plaki			gigantes
dakos
horiatiki
revithia
papoutsakia
galaktoboureko
loukoumades
koulourakia
kourabiedes
melomakarona
tsoureki
magiritsa
flaounes
afelia
# America, north and south
burgoo
brunswick stew
etouffee			crawfish etouffee
shrimp and grits
hoppin' john			hoppin john
succotash
chicken and dumplings
collard greens
johnnycake			johnny cake | hoecake | hoe cake
dump cake
whoopie pie
rice crispy treats			rice krispie treats | crispy treats
ambrosia salad
tater tot casserole
funeral potatoes
salisbury steak
chicken fried steak			country fried steak
poutine
tourtiere
butter tart
nanaimo bar
carne asada
al pastor
tinga			chicken tinga | tinga de pollo
cochinita pibil
chiles rellenos			chile relleno
tlayuda
gordita
mole poblano			chicken mole
esquites
tres leches			tres leches cake | pastel de tres leches
arroz con leche
arroz con pollo			arroz con gandules
ropa vieja
picadillo
moros y cristianos
mofongo
tostones
maduros
pernil
sancocho
pastelon
asopao
ackee and saltfish
jerk chicken			jerk pork
rice and peas
curry goat
pelau
escovitch fish
feijao
moqueca
pao de queijo
brigadeiro
coxinha
vatapa
alfajor
locro
lomo saltado
aji de gallina
anticucho
pastel de choclo
pebre
scrapple
goetta
muffuletta
maque choux
dirty rice
red beans and rice
tomato pie
peach melba
hummingbird cake
chess pie			buttermilk chess pie
shoofly pie
pandowdy			apple pandowdy
indian pudding
anadama bread
scotcharoo
puppy chow
ants on a log
frito pie
king ranch chicken
tater tot hotdish			hotdish
sopapilla
chile con queso
charro beans			frijoles charros
memela
mollete
enfrijoladas
entomatadas
chile verde			chili verde
chile colorado
caldo de res
caldo de pollo
sopa de fideo
sopa de lima
papadzules
panucho
salbute
aguachile
torta ahogada
rajas con crema
calabacitas
capirotada
pan de muerto
champurrado
atole
agua de jamaica
agua fresca			aguas frescas
horchata
curtido
casamiento
gallo pinto
baleada
nacatamal
olla de carne
bandeja paisa
patacon
changua
pabellon criollo
hallaca
cachapa
tequeno
llapingacho
encebollado
seco de pollo
fanesca
papa a la huancaina
arroz chaufa
tacu tacu
carapulcra
rocoto relleno
saltena
silpancho
pique macho
charquican
sopaipilla
humita
choripan
matambre
provoleta
chipa
sopa paraguaya
feijao tropeiro
baiao de dois
acaraje
bobo de camarao
escondidinho
galinhada
pamonha
canjica
beijinho
quindim
pudim
cocada
oil down
buss up shut
macaroni pie
cou cou
pepperpot			pepper pot
metemgee
cook up rice
saltfish buljol			buljol
saltfish fritters
mannish water
fried festival
gizzada
sweet potato pone			cassava pone
griot
soup joumou
bouyon
mangu
vaca frita
congri			arroz congri
alcapurria
bacalaitos
tembleque
coquito
# Africa and the Middle East
jollof rice			jollof | party jollof
fried plantain			dodo | kelewele | alloco
egusi soup
efo riro
ogbono
pepper soup
moin moin			moi moi
akara
suya
puff puff
chin chin
fufu			foo foo
waakye
kenkey
groundnut stew			peanut stew | maafe
yassa			chicken yassa
thieboudienne			thiebou dieun
doro wat			doro wot
misir wat			misir wot
shiro wat
gomen wat
sukuma wiki
ugali
sadza
kachumbari
mandazi			mahamri
githeri
matoke
bobotie
chakalaka
bunny chow
vetkoek
melktert			milk tart
malva pudding
potjie			potjiekos
harira
zaalouk
chermoula fish
pastilla			bastilla
msemen
koshari			kushari
ful medames			ful mudammas
mujaddara			mejadra
maqluba			maqlouba
kibbeh			kibbe
manakish			manakeesh
muhammara
baba ghanoush			baba ganouj
shish tawook			shish taouk
mansaf
musakhan
kabsa			machboos
knafeh			kunafa | knafe
basbousa			revani | namoura
ma'amoul			maamoul
umm ali
sabich
jachnun
kugel			noodle kugel | potato kugel
cholent
tzimmes
matzo ball soup			matzah ball soup
hamantaschen
rugelach
tahdig			rice with tahdig
chelow
ghormeh sabzi
fesenjan			fesenjoon
gheymeh
zereshk polo
kuku sabzi			kuku
ash reshteh
koobideh
joojeh
mast o khiar
mirza ghasemi
salad shirazi			shirazi salad
bademjan			khoresh bademjan | kashk bademjan
khoresh			khoresht
sholeh zard
mutabbal			mutabal
makdous
fatteh
shish barak
masgouf
quzi
mandi
harees
jareesh
saleeg
thareed
margoog
balaleet
luqaimat
malawach
kubaneh
burekas
sufganiyot
lekach
charoset
batata harra
maakouda
abgoosht
borani
mast khiar
adas polo
baghali polo
lubia polo
sabzi polo
ranginak
kabuli pulao			qabili palau
bolani
ashak
lagman			laghman
beshbarmak
samsa
baursak
manti			manty
rfissa
tanjia
bissara
chakchouka
mechouia
lablabi
kamounia
chorba
mhadjeb
makroud
baghrir
sellou
ghriba
sfenj
taktouka
red red
palm nut soup
banku
hausa koko
zobo
sobolo
bissap
domoda
benachin
ndole
saka saka
moambe
ayamase
ofada stew
ewa agoyin
ewa riro
gbegiri
edikang ikong
afang soup
banga soup
nkwobi
asaro
zigni
kitfo
ayib
genfo
chechebsa
firfir
key wat
himbasha
nyama choma
mukimo
maharagwe			maharage
mchicha
wali wa nazi
viazi karai
mishkaki
luwombo
isombe
bariis
canjeero
umngqusho			samp and beans
mieliepap
pap en wors
sosatie
bredie			tomato bredie
roosterkoek
koeksister
hertzoggie
pampoenkoekies
geelrys
sousboontjies
braaibroodjie
smoorsnoek
amagwinya
seswaa
nshima
ifisashi
matapa
romazava
ravitoto
rougail
# South Asia
sambar			sambhar
rasam
idli
medu vada			vada
upma
uttapam
puri			poori | bhatura
chole			chole bhature
rajma masala
kadhi
khichdi			khichri
aloo jeera			jeera aloo
aloo matar
matar paneer			mutter paneer
paneer butter masala			shahi paneer
kadai paneer			kadai chicken
malai kofta
baingan bharta
bhindi masala
keema			keema matar
nihari
haleem
chapli kebab
seekh kebab
tandoori chicken
chettinad chicken
poriyal			cabbage poriyal
thoran
avial
kootu
kosambari
jeera rice			cumin rice
lemon rice
curd rice
pav bhaji
vada pav
bhel puri			bhel
pani puri
chaat
dhokla
thepla
handvo
undhiyu
xacuti
sorpotel
kottu			kottu roti
appam
pol sambol
lassi			mango lassi
gajar halwa			gajar ka halwa
jalebi
barfi			burfi
ladoo			laddu
rasmalai
payasam
podimas
usili
sundal
puliyodarai			puliyogare
bisi bele bath
vangi bath
pongal			ven pongal
rava kesari
pesarattu
paniyaram
murukku
bonda
mysore pak
kuzhambu			vatha kuzhambu | mor kuzhambu
pachadi
gojju
neer dosa
akki roti
kori gassi
erissery
pulissery
theeyal
mezhukkupuratti
puttu
idiyappam			string hopper
kadala curry
meen moilee			fish moilee
pathiri
ishtu
chammanthi
dum aloo
dal tadka
kadhi pakora
sarson ka saag
makki ki roti			makki di roti
karahi chicken			chicken karahi | lamb karahi
aloo paratha
aloo tikki
aloo gosht
aloo keema
litti chokha
shukto
maacher jhol
kosha mangsho
aloo posto
begun bhaja
luchi
cholar dal
mishti doi
sandesh
rasgulla			rosogolla
pitha
khichuri			bhuna khichuri
dalma
santula
pakhala
chhena poda
misal pav			misal
thalipeeth
sabudana khichdi
sabudana vada
batata vada
puran poli
shrikhand
modak
pitla
zunka bhakri			zunka
bhakri
bharli vangi
sol kadhi			solkadhi
koshimbir
usal
akuri
khaman
muthia
sev tameta
khandvi
dal dhokli
gatte ki sabzi
dal baati			dal bati
ker sangri
laal maas
kachori
cafreal
bebinca
alle belle
thukpa
dal bhat
sel roti
ema datshi
kiribath
ambul thiyal
lamprais
parippu
mallung
wattalapam
chikki
# East and southeast Asia
dan dan noodles
zhajiangmian
biang biang noodles
char siu
red braised pork
twice cooked pork
beef and broccoli
scallion pancake			spring onion pancake
shumai			siu mai
wonton soup
lion's head meatballs
xiao long bao			xiaolongbao
char siu bao
turnip cake			radish cake
oyakodon
gyudon
katsudon
karaage			chicken karaage
yakisoba
yaki udon
sukiyaki
shabu shabu
nikujaga
chawanmushi
onigiri
tamagoyaki
agedashi tofu
chirashi
kimchi jjigae			kimchi stew
sundubu			sundubu jjigae | soondubu
doenjang jjigae
kalbi
dakgalbi
kimbap			gimbap
pajeon			kimchijeon | kimchi pancake
hotteok
samgyeopsal
lumpiang shanghai
sinigang
kare kare
sisig
tinola
caldereta			kaldereta
lechon kawali			lechon
sinangag
torta talong			tortang talong
leche flan
turon
halo halo
biko
mee goreng			mie goreng | bami goreng
char kway teow
gado gado
nasi lemak
nasi uduk
soto ayam
rawon
ayam goreng
hainanese chicken rice
bak kut teh
curry puff
kaya toast
roti canai
pad see ew
pad kra pao			pad krapow | thai basil chicken
som tam			som tum | papaya salad
mango sticky rice
khao soi
bun cha
bun bo hue
com tam
goi cuon
banh xeo
thit kho
ca kho
cha gio
nuoc cham
fish amok
lok lak
mohinga
gong bao chicken
suan la fen
liangpi
roujiamo
youtiao
jianbing
cheung fun
har gow
lu rou fan
three cup chicken
gua bao
hong shao rou
dongpo pork
fish fragrant eggplant			fish fragrant aubergine
tomato and egg
smashed cucumber salad
tanghulu
tangyuan
zongzi
mooncake
nian gao
mantou
baozi
sunomono
goma ae			gomaae
soboro
nasu dengaku			dengaku
nimono
kinpira gobo			kinpira
ohitashi
chikuzenni
oden
tonjiru
zosui
ochazuke
takikomi gohan
omurice
hayashi rice
korokke
kushikatsu
takoyaki
zaru soba
hiyashi chuka
tantanmen
tsukune
shogayaki
buri daikon
daigaku imo
dorayaki
taiyaki
anmitsu
daifuku
castella
tsukemono
asazuke
jjajangmyeon
jjamppong
naengmyeon
kalguksu
sujebi
tteokguk
mandu
miyeokguk
yukgaejang
samgyetang
seolleongtang
galbitang
gamjatang
jjigae			budae jjigae
bossam
jeyuk bokkeum
myeolchi bokkeum
gamja jorim
dubu jorim
jangjorim
kongnamul			kongnamul muchim
sigeumchi namul
oi muchim
gyeran mari
gyeran jjim
hobakjuk
songpyeon
sikhye
bingsu
dakgangjeong
sambal goreng
sambal udang
opor ayam
sayur lodeh
sayur asem
urap
perkedel			perkedel jagung
bakwan			bakwan jagung
orek tempe			tempe orek
nasi kuning
ayam geprek
ayam penyet
ayam betutu
pecel
karedok
ketoprak
martabak
klepon
kue lapis
bubur candil
bubur ayam
kolak
cendol
pempek
gudeg
rujak			rojak
mee rebus
mee siam
hokkien mee
asam pedas
ayam masak merah
kuih
nasi kerabu
otak otak
popiah
chai tow kway
nam tok
gaeng som
panang curry			panang
pad prik king
pad woon sen
khao pad
khao man gai
kai jeow
moo ping
sai oua
bun rieu
banh cuon
banh bao
banh canh
mi quang
hu tieu
bo kho
bo luc lac			shaking beef
canh chua
ga kho
cha ca
do chua
samlor
num banh chok
ohn no khao swe
lahpet thoke
lugaw
arroz caldo
bistek
afritada
mechado
dinuguan
pinakbet
bicol express
chicken inasal			inasal
tapsilog
kutsinta
bibingka
palitaw
ginataan
champorado
buko pandan
maja blanca
ensaymada
embutido
# Australia, New Zealand and the Pacific
zucchini slice
chocolate slice			hedgehog slice | vanilla slice | jelly slice
fairy bread
damper
curried sausages
apricot chicken
tuna mornay			mornay
savoury mince			savory mince
caramel slice
ginger crunch
lolly cake
louise cake
afghan biscuit
hokey pokey
sapasui
palusami
pani popo			panipopo
ika mata
kokoda
laulau			lau lau
loco moco
spam musubi			musubi
haupia
kalua pork

# --- eaters ---
@tag EATER
@forms noun
@marks
person	serving		guest | diner | bloke | adult | kid | child | eater | hungry person | lad | teenager | grown up | pax | hungry lad | hungry kid | hungry adult | polite person | big person | normal person | mouth
@forms none
people	serving	plural	hungry people | of us | of you | children | folks | friends | hungry eaters | big eaters | folk | hungry folk | hungry folks | grown folks | grown folk | big people | polite people | normal people | small people | hungry children | hungry men | of the family

# --- parts got from a fruit ---
@tag EXTRACT
@forms noun
@marks
juice	juiced
@forms none
zest	zested		rind | grated rind | grated zest
pulp
flesh
seeds

# --- verbs that are first of all the names of things ---
@tag ACTION
@forms verb
@marks prep cuts
juice	juiced
@marks puts
ladle
@marks
fork
plate		serves

# --- second readings: dishes and parts that another dish is made with, or served with ---
@tag FOOD
@forms noun
@marks generic cooked
slaw		uncounted
soup		uncounted
cookie
icing	frosting	uncounted	frosting
meatball
cake
@marks aside cooked
green salad	salad		side salad | leafy salad
