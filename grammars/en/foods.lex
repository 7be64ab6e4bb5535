# Foods with their other names. The value is the kind: the identity under which two names are the same food.
# How a food is bought (boneless, frozen, ground, dried) is a STATE or a participle before the name, except where
# a shop sells it under that name. Misheard words are not listed here.
# SPDX-License-Identifier: MIT

@tag FOOD

# --- salt, pepper, water ---
@forms none
@marks uncounted salt
salt			fine salt | table salt | cooking salt | iodized salt | iodised salt
kosher salt			coarse kosher salt
sea salt			fine sea salt | coarse sea salt | coarse salt | grey salt
flaky salt			flaky sea salt | flaked salt | flaked sea salt | sea salt flakes | salt flakes | finishing salt | flake salt
pink salt			himalayan salt | pink himalayan salt | himalayan pink salt
curing salt			pink curing salt | prague powder
rock salt
smoked salt
black salt			kala namak
celery salt
garlic salt
onion salt
truffle salt
pickling salt			canning salt
seasoned salt			seasoning salt
herb salt
@marks uncounted water
water			tap water | plain water | cold tap water
ice water	water		ice cold water
pasta water			pasta cooking water | starchy water | cooking water | starchy pasta water | cooking liquid
ice			crushed ice
ice cube	ice			noun
sparkling water			soda water | club soda | seltzer | carbonated water | fizzy water | mineral water
rose water			rosewater
kewra water			kewra | kewra essence | screwpine essence
orange blossom water			orange flower water
@marks uncounted spice
black pepper			ground black pepper | cracked black pepper | black pepper powder | cracked pepper | ground pepper | milled pepper
white pepper			ground white pepper | white pepper powder
# A vegetable in "a red pepper" and in the plural: rules settle it.
pepper	black pepper
# --- spices ---
@forms none
@marks uncounted spice savory
cumin			ground cumin | cumin powder | jeera powder | geera | ground geera | roasted geera | roast geera | roasted cumin | roasted ground cumin | roasted cumin powder | roast cumin powder | toasted cumin powder
cumin seed			jeera | whole cumin | geera seed | zeera | jira | roasted zeera | roasted jeera	noun
ground coriander			coriander powder | dhania powder | dhaniya powder | dhania | dhaniya
coriander seed			whole coriander	noun
turmeric			ground turmeric | turmeric powder | haldi | haldi powder
paprika			sweet paprika | hungarian paprika | ground paprika
smoked paprika			sweet smoked paprika | pimenton | spanish paprika | smoky paprika
hot paprika			hot smoked paprika
cayenne pepper			cayenne | ground cayenne | cayenne powder
chili powder			chilli powder | chile powder | mild chili powder | hot chili powder | kashmiri chili powder | kashmiri chilli powder | red chili powder | red chilli powder | kashmiri red chili powder | kashmiri red chilli powder | deggi mirch | degi mirch
chili flake			chilli flake | chile flake | red pepper flake | red chili flake | red chilli flake | crushed red pepper flake | hot pepper flake | pepper flake | dried chilli flake | dried chili flake	noun
crushed red pepper	chili flake		crushed chilli | crushed chili | crushed chillies
aleppo pepper			aleppo chili flakes | pul biber | urfa pepper | urfa biber | urfa chili
# The same, but neither sweet nor savory by itself.
@marks uncounted spice
gochugaru			korean chili flakes | korean chilli flakes | korean red pepper flakes | korean chili powder
chipotle powder			ground chipotle | chipotle chili powder | chipotle chilli flakes | chipotle flakes
ancho powder	ancho chili powder		ancho chili powder | ancho chile powder
cinnamon			ground cinnamon | cinnamon powder | canela | mexican cinnamon | cassia
@marks spice
cinnamon stick			cinnamon bark | cinnamon quill | cassia bark	noun
@marks uncounted spice
nutmeg			ground nutmeg | whole nutmeg
mace			ground mace | blade mace | blade of mace
# "clove" is first the clove of garlic (units.lex).
ground clove	clove		ground cloves | clove powder
whole clove			clove	noun
allspice			ground allspice | pimento powder | all spice | ground all spice
allspice berry	allspice		whole allspice	noun
cardamom			ground cardamom | cardamom powder | elaichi | elaichi powder | elachi powder
@marks spice
cardamom pod			green cardamom pod | green cardamom | whole cardamom pod | cardamom seed | cardamoms	noun
@marks uncounted spice
black cardamom			black cardamom pod	noun
@marks spice
star anise
star anises	star anise	plural
@marks uncounted spice savory
fenugreek			ground fenugreek | fenugreek powder | methi | halba
fenugreek seed			methi seed	noun
mustard seed			yellow mustard seed | black mustard seed | brown mustard seed	noun
mustard powder			dry mustard | ground mustard | dried mustard | english mustard powder | dry mustard powder
garlic powder			granulated garlic | powdered garlic | garlic granules
onion powder			granulated onion | powdered onion | onion granules
dried onion			onion flakes | dried minced onion | minced dried onion | dehydrated onion
dried garlic			garlic flakes | dried minced garlic
crispy onion			fried onion | french fried onion | crispy fried onion | crispy shallot | fried shallot | birista	noun
sumac
za'atar			zaatar | zatar
garam masala
curry powder			mild curry powder | hot curry powder | madras curry powder | medium curry powder | mixed masala | durban masala
chaat masala			chat masala
tandoori masala			tandoori spice | tandoori powder
tikka masala spice
biryani masala
sichuan peppercorn			szechuan peppercorn | sichuan pepper | szechuan pepper | ground sichuan pepper	noun
# The same, but neither sweet nor savory by itself.
@marks uncounted spice
anise seed			aniseed | anise	noun
fennel seed			ground fennel | saunf	noun
fennel pollen
ground ginger			ginger powder | powdered ginger | dried ginger
saffron			saffron thread | saffron strand | thread of saffron | kesar	noun
dukkah			dukka
ras el hanout
baharat
berbere
advieh
harissa powder
sambar powder			sambhar powder | rasam powder
panch phoron
vadouvan
hawaij
five spice			five spice powder | chinese five spice | chinese five spice powder | 5 spice
@marks spice savory
peppercorn			black peppercorn | whole peppercorn | whole black peppercorn | whole black pepper | white peppercorn | pepper corn | black pepper corn	noun
@marks uncounted spice
green peppercorn		savory	pink peppercorn	noun
shichimi togarashi			togarashi | seven spice
furikake
asafoetida			asafetida | hing | hing powder
amchur			dried mango powder | dry mango powder | mango powder | amchoor | amchur powder | amchoor powder
sumac powder	sumac	savory
celery seed			ground celery seed	noun
caraway seed			caraway | ground caraway	noun
nigella seed			kalonji | onion seed | black onion seed | nigella	noun
carom seed			ajwain | ajwain seed	noun
dill seed				noun
annatto			achiote | annatto seed | achiote seed | achiote powder | annatto powder | achuete | atsuete | achuete seed | annatto powder seed
achiote paste			annatto paste
@marks spice
juniper berry			juniper	noun
vanilla bean			vanilla pod | vanilla bean seed	noun
@marks uncounted spice
mixed spice			ground mixed spice
pumpkin pie spice			pumpkin spice | apple pie spice
gingerbread spice
speculaas spice
lavender			dried lavender | culinary lavender
rose petal			dried rose petal	noun
italian seasoning		savory	italian herbs | dried italian herbs | dried italian seasoning | italian herb seasoning | mixed herbs | dried mixed herbs | mixed dried herbs | dried herbs
herbes de provence			herbs de provence | provencal herbs
cajun seasoning		savory	cajun spice | creole seasoning | cajun spice mix | blackened seasoning | blackening seasoning
seafood seasoning		savory	seafood boil seasoning
taco seasoning		savory	taco seasoning mix | taco spice | fajita seasoning | taco mix
poultry seasoning		savory	chicken seasoning | rotisserie seasoning
steak seasoning		savory	steak spice | montreal steak seasoning | steak rub
lemon pepper		savory	lemon pepper seasoning
adobo seasoning		savory	sazon | sazon seasoning
jerk seasoning		savory	jamaican jerk seasoning | jerk spice
greek seasoning		savory
ranch seasoning		savory	ranch mix | ranch dressing mix | ranch powder | ranch packet
everything bagel seasoning		savory	everything seasoning | everything bagel spice
all purpose seasoning		generic savory	season all | house seasoning | complete seasoning
chili seasoning		savory	chili seasoning mix
barbecue rub			bbq rub | barbecue seasoning | spice rub | dry rub
liquid smoke
msg			monosodium glutamate
mushroom powder			mushroom seasoning | porcini powder
bouillon powder			instant bouillon | beef bouillon powder | stock powder | chicken powder | chicken bouillon powder | vegetable bouillon powder | dashi powder | hondashi | instant dashi | vegetable stock powder | chicken stock powder
kelp powder
lime powder			dried lime | dried black lime | black lime | loomi
spice		generic	spice mix | spice blend | mixed spices | seasoning mix | seasoning blend | spice mixture	noun
# Counted. "bay" alone is the tree's leaf only beside a number.
@marks spice savory
bay leaf			dried bay leaf | fresh bay leaf | bay | tej patta | caribbean bay leaf	noun
salam leaf			indonesian bay leaf | daun salam	noun
curry leaf			fresh curry leaf | karapincha	noun
# The same, but neither sweet nor savory by itself.
@marks spice
lime leaf			makrut lime leaf | kaffir lime leaf	noun

# --- herbs ---
@forms noun
@marks uncounted herb savory
basil			sweet basil | fresh basil
thai basil			holy basil | fresh thai basil
oregano			fresh oregano
mexican oregano			fresh mexican oregano
fenugreek leaf			dried fenugreek leaf | methi leaf | kasoori methi | kasuri methi	noun
hibiscus			hibiscus flower | dried hibiscus | dried hibiscus flower
thyme			lemon thyme | fresh thyme
sage			fresh sage
parsley			flat leaf parsley | italian parsley | curly parsley | flat parsley | fresh parsley
peppermint			fresh peppermint | pepper mint
dill			dill weed | dill frond | fresh dill
chive			garlic chive | chinese chive | fresh chive
tarragon			fresh tarragon
marjoram			fresh marjoram
chervil			fresh chervil
cilantro			fresh cilantro
sorrel			fresh sorrel
lovage			fresh lovage
summer savory	savory		winter savory | fresh savory | savory | summer savoury | winter savoury
epazote			fresh epazote
shiso			shiso leaf | perilla | fresh shiso
hyssop			fresh hyssop
borage			fresh borage
culantro			fresh culantro
curry plant			fresh curry plant
fresh coriander	cilantro		green coriander | coriander root | leaf coriander
# The leaf unless "ground" or "seed" is said; American cooks mean the seed.
coriander	cilantro
herb		generic	fresh herb | soft herb | mixed fresh herb | green herb | woody herb
bouquet garni
micro herb	microgreen		microgreen | micro green | micro cress
edible flower
pandan leaf			pandan | rampe leaf
banana leaf
grape leaf			vine leaf
fennel frond			fennel top
carrot top
# The same, but neither sweet nor savory by itself.
@marks uncounted herb
rosemary			rosemary needle | fresh rosemary
mint			spearmint | fresh mint
lemon balm			fresh lemon balm
lemon verbena			fresh lemon verbena
lemongrass			lemon grass
@forms none
@marks uncounted spice
dried basil			dry basil
dried oregano			dry oregano | ground oregano
dried thyme			dry thyme | ground thyme
dried rosemary			dry rosemary | ground rosemary
dried sage			dry sage | ground sage | rubbed sage | powdered sage
dried parsley			dry parsley | parsley flakes | parsley flake
dried mint			dry mint
dried dill			dry dill | dried dill weed
dried chive			dry chive | dried chives | freeze dried chives
dried tarragon			dry tarragon
dried marjoram			dry marjoram | ground marjoram
dried chervil			dry chervil
dried cilantro			dry cilantro
dried savory			dry savory
dried epazote			dry epazote
dried coriander leaf	dried cilantro
dried herb		generic		noun
dried mexican oregano

# --- vegetables ---
@forms noun
@marks produce savory
onion			yellow onion | white onion | brown onion | spanish onion | cooking onion
red onion			purple onion
sweet onion			vidalia onion | vidalia
pearl onion			baby onion | button onion | cipollini onion | cipollini | silverskin onion | pickling onion | boiling onion
scallion			green onion | spring onion | salad onion | scallion green | scallion white | green onion top | escallion | welsh onion | korean chives | buchu
shallot			banana shallot | french shallot | eschalot | asian shallot | echalion shallot | small onion | sambar onion
leek			baby leek
garlic		uncounted	fresh garlic	none
roasted garlic		uncounted		none
black garlic		uncounted		none
wild garlic		uncounted	ramp | ramson | ramps | green garlic | garlic scape
galangal		uncounted		none
kencur		uncounted	sand ginger | aromatic ginger | kencur powder	none
fresh turmeric		uncounted	turmeric root | fresh turmeric root	none
horseradish		uncounted	fresh horseradish | horseradish root	none
wasabi		uncounted	wasabi paste | fresh wasabi	none
celery		uncounted	celery heart	none
celery leaf		uncounted	leaves of celery | celery top	noun:celery leaves
celeriac			celery root | celery knob
parsnip
turnip			baby turnip | white turnip | shalgam
rutabaga			swede | yellow turnip | neep
radish			red radish | breakfast radish | watermelon radish
daikon			daikon radish | mooli | white radish | korean radish | mu radish
kohlrabi
salsify			black salsify | scorzonera
jerusalem artichoke			sunchoke
lotus root
burdock root			gobo | burdock
jicama
taro			taro root | eddo | dasheen | cocoyam | arbi | gabi | kochu | colocasia
cassava			yuca | manioc | yucca root | mandioca | aipim | boniato
yam			yam root
malanga			yautia | tannia
ackee			akee
oca
parsley root			hamburg parsley | root parsley
water chestnut
bamboo shoot
potato			white potato | brown potato | irish potato | baking potato | jacket potato | all purpose potato | waxy potato | floury potato | starchy potato | main crop potato | kipfler potato | kipfler | desiree | dutch cream potato | sebago potato | estima potato | roasting potato | mashing potato | agria | agria potato | rooster potato | rooster | kerr's pink | kerr's pink potato | british queen potato | kestrel potato | la ratte | la ratte potato | old potato | aloo
russet potato			russet | idaho potato | maris piper | maris piper potato | king edward | king edward potato
red potato			red skinned potato | red bliss potato | desiree potato
yukon gold potato			yukon gold | yellow potato | gold potato | yukon potato
new potato			baby potato | salad potato | fingerling potato | fingerling | charlotte potato | creamer potato | baby new potato | jersey royal | charlotte | chat potato | nadine potato | pink fir apple
spud	potato
tomato			vine tomato | beefsteak tomato | salad tomato | heirloom tomato | slicing tomato | fresh tomato | vine ripened tomato
cherry tomato			grape tomato | baby tomato | cocktail tomato | baby plum tomato | cherry plum tomato
plum tomato			roma tomato | san marzano tomato | roma | italian tomato | italian plum tomato
green tomato
tomatillo
sun dried tomato	sun-dried tomato	cooked	sundried tomato | semi dried tomato | sunblushed tomato | sun blush tomato
bell pepper			capsicum | sweet pepper | mini pepper | mini sweet pepper | mixed pepper | romano pepper
red bell pepper			red pepper | red capsicum | sweet red pepper | red bell | tatashe
green bell pepper			green pepper | green capsicum | green bell
yellow bell pepper			yellow pepper | yellow capsicum
orange bell pepper			orange pepper | orange capsicum
roasted red pepper		cooked	jarred roasted red pepper | roasted pepper | jarred red pepper | roasted bell pepper | piquillo pepper | fire roasted red pepper | roasted red bell pepper
# The plural is the vegetable.
peppers	bell pepper	plural		none
chili pepper	chili		chili | chilli | chile | chile pepper | chilli pepper | hot pepper | fresh chilli | fresh chili | fresh chile | hot chili | hot chilli | hot chile | seasoning pepper | pimento pepper | pimiento pepper | calabrian chilli | rocoto | siling haba | aji dulce | ata rodo | wiri wiri pepper | kancha lanka
chilies	chili	plural	chillies | fresh chillies | fresh chilies | hot chillies | hot chilies	none
red chilies	red chili	plural	red chillies | long red chillies | long red chilies	none
green chilies	green chili	plural	green chillies | long green chillies	none
thai chilies	thai chili	plural	thai chillies | bird's eye chillies | birds eye chillies | bird's eye chilies | birds eye chilies | bird chillies	none
dried chilies	dried chili	plural	dried chillies | dried red chillies | dried red chilies | whole dried chillies | dried kashmiri chillies | kashmiri chillies | kashmiri chilies	none
red chili			red chilli | red chile | red chili pepper | red chile pepper | red chilli pepper | long red chilli | long red chili | fresno chili | fresno pepper | fresno chile | fresno
green chili			green chilli | green chile | green chili pepper | green chilli pepper | green chile pepper | finger chilli | hatch chile | hatch chili | long green chilli | anaheim pepper | anaheim chile
thai chili			bird's eye chili | bird's eye chilli | birds eye chilli | birds eye chili | bird eye chili | bird chili | thai chilli | thai chile | thai chili pepper | bird's eye | thai bird chili
jalapeno			jalapeno pepper | jalapeno chili | jalapeno chile | jalapeno chilli
pickled jalapeno		cooked
serrano	serrano pepper		serrano pepper | serrano chili | serrano chile
habanero			habanero pepper | habanero chili | scotch bonnet | scotch bonnet pepper | scotch bonnet chilli | scotch bonnet chili
poblano	poblano pepper		poblano pepper | poblano chile | poblano chili
shishito pepper			shishito | padron pepper
banana pepper			pepperoncini | peperoncini | pepperoncino | hungarian wax pepper
ghost pepper
pimiento			pimento
dried chili			dried chilli | dried red chili | dried red chilli | dried chile | dried red chile | whole dried chilli | chile de arbol | arbol chile | dried kashmiri chilli | kashmiri chilli | kashmiri chili | guindilla | byadgi chilli | guntur chilli | nora pepper | cascabel chile | chili de arbol | arbol | arbol chili | chilli de arbol
ancho chile	ancho chili		ancho chili | ancho
guajillo chile	guajillo chili		guajillo chili | guajillo | guajillo pepper
pasilla chile	pasilla chili		pasilla | pasilla chili | mulato chile
chipotle	chipotle pepper		chipotle pepper | chipotle chile | chipotle chili | chipotle in adobo | chipotle pepper in adobo | chipotle chile in adobo | chipotles in adobo | chipotle peppers in adobo | chipotle peppers in adobo sauce
eggplant			aubergine | baby aubergine | japanese eggplant | chinese eggplant | italian eggplant | brinjal | globe eggplant | garden egg | thai aubergine | apple eggplant | pea aubergine | thai eggplant | pea eggplant | turkey berry
squash		generic	summer squash | winter squash
yellow squash			yellow summer squash | pattypan squash | crookneck squash | yellow zucchini | yellow courgette
butternut squash			butternut | butternut pumpkin | butter nut squash | butter nut
acorn squash
spaghetti squash
delicata squash			delicata
kabocha squash			kabocha | crown pumpkin | crown prince squash | hokkaido pumpkin | hokkaido squash | red kuri squash | onion squash | buttercup squash | turban squash | japanese pumpkin
hubbard squash
chayote			chayote squash | choko | sayote | mirliton | christophene | chow chow | cho cho | christophine | chuchu
bitter melon			bitter gourd | karela | ampalaya
bottle gourd			lauki | calabash | upo
ridge gourd			turai
snake gourd
ivy gourd			tindora | tindli
cardoon
banana blossom			banana flower
tinda			apple gourd | indian round gourd
winter melon
luffa			patola
zucchini blossom	squash blossom		squash blossom | courgette flower
cucumber			english cucumber | hothouse cucumber | persian cucumber | lebanese cucumber | telegraph cucumber | japanese cucumber | mini cucumber | kirby cucumber | pickling cucumber
corn		uncounted	sweet corn | sweetcorn | corn kernel | fresh corn | kernel corn | sweetcorn kernel | sweetcorn cob
corn on the cob			corn cob | corncob
corn cobs	corn	plural		none
baby corn			baby sweetcorn
frozen corn		uncounted	frozen sweetcorn	none
canned corn		uncounted cooked	tinned sweetcorn | tinned corn	none
creamed corn		uncounted cooked	cream style corn	none
hominy		uncounted	pozole corn	none
pea		uncounted	green pea | garden pea | english pea | petit pois | petits pois | fresh pea | sweet pea | shelled pea | baby pea
frozen pea		uncounted
snow pea			mangetout | mange tout | sugar snap pea | snap pea | sugar snap | snowpea
green bean			french bean | string bean | haricot vert | haricots verts | fine green bean | runner bean | wax bean | snap bean | long bean | dwarf bean | yard long bean | fine bean | flat bean | flat green bean | helda bean | romano bean | stick bean | bodi | bodi bean | cluster bean | guar bean
fava bean			broad bean | ful | ful bean
edamame		uncounted	edamame bean | shelled edamame
okra		uncounted	lady's finger | bhindi | okra pod | ladies finger | quiabo
asparagus		uncounted	asparagus spear | asparagus tip | white asparagus | green asparagus	none
asparagus spears	asparagus	plural	asparagus tips	none
broccoli		uncounted	broccoli floret | broccoli crown | calabrese
broccolini		uncounted	tenderstem broccoli | tenderstem | baby broccoli | purple sprouting broccoli | sprouting broccoli	none
broccoli rabe		uncounted	rapini | cime di rapa | chinese broccoli | gai lan | kai lan	none
cauliflower			cauliflower floret | gobi
romanesco
cauliflower rice		uncounted	riced cauliflower	none
cabbage			white cabbage | green cabbage | round cabbage | cannonball cabbage | hispi cabbage | pointed cabbage | sweetheart cabbage | spring cabbage | sugarloaf cabbage
red cabbage			purple cabbage
savoy cabbage			savoy
napa cabbage			chinese cabbage | chinese leaf | nappa cabbage | wombok | napa
brussels sprout			brussel sprout | sprout
coleslaw mix		uncounted	slaw mix | shredded cabbage mix	none
bok choy			pak choi | pak choy | baby bok choy | baby pak choi | bok choi | pechay
kale		uncounted	lacinato kale | tuscan kale | curly kale | dinosaur kale | cavolo nero | black kale | dino kale | baby kale	none
spinach		uncounted	baby spinach | fresh spinach | english spinach | leaf spinach | young spinach | palak	none
frozen spinach		uncounted	frozen chopped spinach | frozen leaf spinach	none
chard		uncounted	swiss chard | rainbow chard | silverbeet | silver beet	none
collard green		uncounted	collard | couve | spring green | collards
mustard green		uncounted
beet green		uncounted	beetroot leaf
turnip green		uncounted	turnip top | grelos | friarielli
dandelion green		uncounted	dandelion leaf
water spinach		uncounted	morning glory | kangkong | kangkung | kang kong
callaloo		uncounted
mizuna		uncounted
tatsoi		uncounted
samphire		uncounted	sea asparagus
purslane		uncounted
nettle		uncounted
malabar spinach		uncounted
chrysanthemum green		uncounted
lettuce		generic	green lettuce | salad leaf | salad lettuce | lamb's lettuce | lambs lettuce
iceberg lettuce			iceberg
romaine lettuce			romaine | cos lettuce | cos | romaine heart
butter lettuce			bibb lettuce | boston lettuce | butterhead lettuce | round lettuce
little gem	little gem lettuce		little gem lettuce | gem lettuce | baby gem | baby gem lettuce
leaf lettuce			red leaf lettuce | green leaf lettuce | oak leaf lettuce | lollo rosso
salad greens		uncounted generic	mixed greens | mixed salad leaves | salad leaves | mixed leaves | spring mix | mesclun | baby greens | baby leaves | field greens | salad mix | mixed lettuce | mixed salad greens | bagged salad	none
# "greens" alone and "leaves" alone are as often parts of another plant.
greens		uncounted generic	leafy greens | asian greens | green vegetables | winter greens	none
arugula		uncounted	rocket | baby arugula | wild rocket | roquette	none
komatsuna		uncounted	choy sum | yu choy	none
cress		uncounted	garden cress | mustard and cress	none
watercress		uncounted	land cress | upland cress | water cress	none
endive			belgian endive | chicory | curly endive | escarole | frisee
radicchio			treviso | red chicory
fennel			bulb fennel | florence fennel
artichoke			globe artichoke | baby artichoke
artichoke heart		cooked	canned artichoke | marinated artichoke heart | marinated artichoke | jarred artichoke | canned artichoke heart
heart of palm		cooked	palm heart
hearts of palm	heart of palm	cooked plural		none
mushroom			button mushroom | white mushroom | closed cup mushroom | fresh mushroom | field mushroom | flat mushroom | white button mushroom | mixed mushroom
cremini mushroom			cremini | crimini mushroom | crimini | baby bella mushroom | baby bella | chestnut mushroom | brown mushroom | swiss brown mushroom | baby portobello mushroom | baby portobello
portobello mushroom			portobello | portabella | portabella mushroom | portobello cap | portobello mushroom cap
shiitake mushroom			shiitake | shitake mushroom | fresh shiitake | pyogo mushroom
dried shiitake	dried shiitake mushroom		dried shiitake mushroom | dried chinese mushroom | dried black mushroom | dried mushroom
porcini mushroom			porcini | cep | dried porcini | dried porcini mushroom | dried cep
oyster mushroom			king oyster mushroom | king trumpet mushroom
enoki mushroom			enoki
chanterelle			chanterelle mushroom | girolle
morel			morel mushroom
maitake mushroom			maitake | hen of the woods
wood ear mushroom			wood ear | black fungus
wild mushroom
straw mushroom
lion's mane mushroom			lions mane
shimeji mushroom			shimeji | beech mushroom
bean sprout		uncounted	beansprout | mung bean sprout | soybean sprout
alfalfa sprout		uncounted
pea shoot		uncounted	pea tendril
nopal			cactus paddle | nopales
breadfruit
frozen vegetable	frozen vegetables	uncounted generic	frozen mixed vegetable | frozen stir fry vegetable
frozen pea and carrot	frozen peas and carrots	uncounted	frozen peas and carrots | peas and carrots | frozen carrots and peas | carrots and peas	none
vegetable		uncounted generic	veg | veggie | mixed vegetable | root vegetable | mixed veg | stir fry vegetable | root veg
mirepoix		uncounted	soffritto | sofrito	none
seaweed		uncounted	wakame | dulse | hijiki | sea vegetable	none
kombu		uncounted	kelp | dried kelp	none
nori			nori sheet | seaweed sheet | toasted nori | roasted seaweed | laver
# The same, but neither sweet nor savory by itself.
@marks produce
ginger		uncounted	fresh ginger | ginger root | root ginger | fresh root ginger | gingerroot | fresh ginger root	none
carrot			baby carrot | heritage carrot | heirloom carrot | rainbow carrot | gajar
beet			beetroot | red beet | golden beet | baby beet | baby beetroot
sweet potato			orange sweet potato | kumara | white sweet potato | purple sweet potato | orange kumara | red kumara | golden kumara
zucchini			courgette | baby courgette | marrow | zucchini squash
pumpkin			sugar pumpkin | pie pumpkin
rhubarb		uncounted	forced rhubarb | rhubarb stem	none
truffle			black truffle | white truffle
plantain			green plantain | ripe plantain | sweet plantain | saba banana | saba | ash plantain | cooking banana
jackfruit		uncounted	young jackfruit | green jackfruit | canned jackfruit | langka | jak fruit | jak | kathal	none
avocado			hass avocado | avocado pear | zaboca

# --- fruit ---
@forms noun
@marks produce sweet
apple			eating apple | dessert apple | tart apple | red apple | green apple | gala apple | golden delicious apple | red delicious apple | braeburn apple | cortland apple | honeycrisp apple | honeycrisp | fuji apple | pink lady apple | cox apple | cox | crab apple | russet apple | jazz apple | discovery apple | braeburn | pink lady | boskoop | antonovka | jonagold | elstar | empire apple
granny smith apple			granny smith | tart green apple | cooking apple | bramley apple | bramley
dried apple
pear			bartlett pear | bosc pear | conference pear | anjou pear | comice pear
asian pear			nashi pear | korean pear
quince
mandarin			mandarin orange | clementine | satsuma | tangerine | canned mandarin
grapefruit			pink grapefruit | ruby grapefruit | grape fruit
pomelo
kumquat
bergamot
banana
banana chip
strawberry			fresh strawberry
frozen strawberry
raspberry			fresh raspberry
frozen raspberry
blueberry			fresh blueberry
frozen blueberry
blackberry			bramble | boysenberry | black berry
cranberry			fresh cranberry | frozen cranberry
gooseberry			goose berry
mulberry
elderberry
lingonberry
cloudberry
huckleberry
saskatoon berry			saskatoon | juneberry
sloe
acai
black currant			blackcurrant
red currant			redcurrant | white currant
goji berry
berry		generic	mixed berry | frozen berry | frozen mixed berry | summer berry | mixed frozen berry
cherry			sweet cherry | sour cherry | tart cherry | bing cherry | morello cherry | fresh cherry
maraschino cherry			cocktail cherry
glace cherry	candied cherry		candied cherry | glazed cherry
dried cherry			dried sour cherry | dried tart cherry
frozen cherry
peach			white peach | yellow peach
canned peach		cooked	tinned peach | peach half
nectarine
apricot			fresh apricot
dried apricot
plum			black plum | damson | mirabelle | red plum
medlar
greengage
pluot
prune			dried plum
grape			red grape | green grape | seedless grape | white grape | black grape
currant			dried currant | zante currant
mixed dried fruit	dried fruit	uncounted	dried fruit | mixed fruit | dried mixed fruit | mixed vine fruit
mixed peel		uncounted	candied peel | candied orange peel | candied citrus peel | candied lemon peel | candied fruit | citron | candied citron
date			medjool date | medjool | dried date
fig			fresh fig | black mission fig
dried fig
melon		generic	galia melon | honeydew melon | honeydew
cantaloupe			cantaloupe melon | rockmelon
watermelon			water melon
kiwi			kiwifruit | kiwi fruit
passion fruit			passionfruit | passion fruit pulp
guava
lychee			litchi
mangosteen
longan
rambutan
durian
dragon fruit
star fruit			carambola | starfruit
persimmon			fuyu persimmon | sharon fruit
loquat
prickly pear
soursop
cape gooseberry
applesauce		uncounted	apple sauce | apple puree | unsweetened applesauce	none
fruit cocktail		uncounted cooked	canned fruit
fruit		generic	citrus fruit | stone fruit | fresh fruit | soft fruit
grapefruit juice		uncounted		none
cranberry juice		uncounted		none
pomegranate juice		uncounted		none
grape juice		uncounted	white grape juice	none
cherry juice		uncounted		none
mango juice		uncounted	mango nectar | mango pulp | mango puree	none
peach nectar		uncounted	apricot nectar	none
peach juice		uncounted		none
# The same, but neither sweet nor savory by itself.
@marks produce
lemon			unwaxed lemon | fresh lemon | gondhoraj lime
meyer lemon
lemon wedge			lemon twist | twist of lemon
lime wedge
preserved lemon		cooked	salted lemon
lime			key lime | fresh lime | dayap | finger lime
# Also a color: rules settle it.
orange			navel orange | blood orange | valencia orange | seville orange | fresh orange
yuzu
calamansi
raisin			seedless raisin | dark raisin | black raisin
golden raisin			sultana | white raisin
dried cranberry
pineapple			fresh pineapple | pineapple ring | pineapple chunk
canned pineapple		uncounted cooked	crushed pineapple | tinned pineapple | pineapple in juice | pineapple tidbit	none
mango			green mango | raw mango
papaya			green papaya | pawpaw
pomegranate
anardana
pomegranate seed		uncounted	pomegranate aril
coconut			fresh coconut | coconut flesh
desiccated coconut		uncounted	flaked coconut | coconut flake | grated coconut | sweetened shredded coconut | unsweetened shredded coconut | unsweetened coconut | sweetened coconut | dried coconut | coconut shred
tamarind		uncounted	tamarind pulp	none
tamarind paste		uncounted	tamarind concentrate | tamarind puree	none
citrus		generic		none
lemon zest		uncounted	lemon peel | lemon rind	none
lime zest		uncounted	lime peel | lime rind	none
orange zest		uncounted	orange peel | orange rind | strip of orange peel	none
grapefruit zest		uncounted		none
citrus zest		uncounted		none
dried orange peel		uncounted	dried tangerine peel | dried mandarin peel	none
lemon juice		uncounted	fresh lemon juice | bottled lemon juice | squeezed lemon juice	none
lime juice		uncounted	fresh lime juice | key lime juice | bottled lime juice	none
orange juice		uncounted	blood orange juice | fresh orange juice | orange juice concentrate	none
citrus juice		uncounted		none
apple juice		uncounted	apple cider | sweet cider | fresh apple juice	none
pineapple juice		uncounted		none
tomato juice		uncounted		none
carrot juice		uncounted		none
vegetable juice		uncounted		none
fruit juice		uncounted generic		none
onion juice		uncounted		none
clam juice		uncounted cooked		none
lemonade		uncounted	frozen lemonade | limeade | lemonade concentrate	none
pickle juice	pickle brine	uncounted	pickle brine | pickle liquid | caper brine | olive brine	none

# --- eggs ---
@forms noun
@marks egg
egg			hen's egg | free range egg | fresh egg | extra large egg | room temperature egg
egg yolk			yolk | yolk of egg
egg white
# "whites" alone are egg whites beside yolks; "white" is a color.
egg whites	egg white	plural	whites	none
hard boiled egg	hard-boiled egg	cooked	boiled egg | hard cooked egg | soft boiled egg
poached egg		cooked
fried egg		cooked
scrambled egg		cooked
quail egg			quail's egg
duck egg			duck's egg
egg substitute		uncounted	liquid egg
meringue powder		uncounted
egg wash		uncounted	eggwash

# --- dairy ---
@forms none
@marks uncounted dairy
milk			fresh milk | cow's milk
whole milk			full fat milk | full cream milk
low fat milk	low-fat milk		reduced fat milk | semi skimmed milk | two percent milk | 2% milk | 2 percent milk | one percent milk | 1% milk
skim milk			skimmed milk | nonfat milk | non fat milk | fat free milk
buttermilk			butter milk | low fat buttermilk | cultured buttermilk | sour milk | soured milk | karnemelk | chaas | chaach
evaporated milk
condensed milk	sweetened condensed milk	sweet	sweetened condensed milk | condense milk
milk powder			powdered milk | dry milk | dried milk | nonfat dry milk | dry milk powder | instant milk powder
goat's milk	goat milk		goat milk
sheep's milk
chocolate milk		sweet
malted milk powder		sweet	malt powder | malted milk
cream		generic	fresh cream | pouring cream | thin cream | table cream
heavy cream			heavy whipping cream | whipping cream | thickened cream
double cream			extra thick double cream | thick cream
single cream			light cream | coffee cream
clotted cream		sweet
whipped cream		sweet	whipped topping | frozen whipped topping | aerosol cream | squirty cream | lightly whipped cream | whip cream
coffee creamer			creamer | powdered creamer
half and half	half-and-half		half and half cream | half n half | half & half
sour cream			soured cream | light sour cream | low fat sour cream | reduced fat sour cream | fat free sour cream
creme fraiche			half fat creme fraiche
mexican crema			crema | crema mexicana | table crema
yogurt			yoghurt | curd | thick curd | fresh curd | dahi | plain yogurt | natural yogurt | plain yoghurt | natural yoghurt | low fat yogurt | nonfat yogurt | plain low fat yogurt | plain nonfat yogurt | vanilla yogurt | whole milk yogurt | full fat yogurt | set yogurt | hung curd | set curd | matsoni
greek yogurt			greek yoghurt | greek style yogurt | greek style yoghurt | strained yogurt | thick yogurt | thick yoghurt | plain greek yogurt | skyr
labneh			labne
kefir			milk kefir
quark			curd cheese | fromage frais | rahka | petit suisse | turo
whey
custard		sweet	creme anglaise | vanilla custard | ready made custard | vla
eggnog		sweet
dulce de leche		sweet
cajeta		sweet
ice cream		sweet	vanilla ice cream | chocolate ice cream | gelato
sorbet		sweet
sherbet		sweet
frozen yogurt		sweet
@marks uncounted dairy fat
butter			salted butter | good butter | slightly salted butter | lightly salted butter | real butter
unsalted butter			sweet butter | sweet cream butter
brown butter			browned butter | beurre noisette
whipped butter
herb butter			compound butter
garlic butter
brandy butter		sweet
cultured butter
clarified butter	ghee		ghee | desi ghee | drawn butter | samna | smen
margarine			oleo | baking margarine | spread margarine | stick margarine | baking spread | margarine spread | block margarine | baking block | golden ray
vegan butter			plant butter | dairy free butter | plant based butter | dairy free spread | vegan spread
@marks uncounted dairy cooked savory
cheddar			cheddar cheese | sharp cheddar | sharp cheddar cheese | mature cheddar | mild cheddar | white cheddar | extra sharp cheddar | extra sharp cheddar cheese | mild cheddar cheese | medium cheddar | strong cheddar | vintage cheddar | yellow cheddar | cheddar jack
parmesan			parmesan cheese | parmigiano | parmigiano reggiano | parm | grana padano | reggiano | freshly grated parmesan | parmigiano reggiano cheese
parmesan rind			parm rind | cheese rind
pecorino			pecorino romano | romano | romano cheese | pecorino cheese | pecorino romano cheese
asiago			asiago cheese
manchego			manchego cheese
mozzarella			mozzarella cheese | low moisture mozzarella | mozz | part skim mozzarella | part skim mozzarella cheese
fresh mozzarella			buffalo mozzarella | mozzarella ball | bocconcini | mozzarella pearl
burrata
stracciatella
provolone			provolone cheese
string cheese
feta			feta cheese | white cheese | beyaz peynir | sirene | telemea
halloumi			haloumi | halloumi cheese
ricotta salata
paneer			indian cottage cheese
queso fresco			fresh cheese | queso blanco
queso			queso dip
cotija			cotija cheese
oaxaca cheese			queso oaxaca
monterey jack			monterey jack cheese | jack cheese | colby jack | colby jack cheese | colby | colby cheese
pepper jack			pepper jack cheese | pepperjack
mexican cheese blend			mexican blend cheese | mexican blend | mexican cheese | fiesta blend | italian cheese blend
goat cheese			goat's cheese | chevre | goats cheese | soft goat cheese | goat cheese log | chevre log
blue cheese			gorgonzola | stilton | roquefort | bleu cheese | blue cheese crumble | danish blue | roquefort cheese | gorgonzola cheese | stilton cheese
brie			brie cheese
camembert
taleggio
gruyere			gruyere cheese
emmental			emmentaler | emmenthal | leerdammer
swiss cheese			swiss | jarlsberg
comte			comte cheese
raclette
fontina			fontina cheese
gouda			gouda cheese | smoked gouda
edam			edam cheese
havarti
muenster			muenster cheese | munster
red leicester
double gloucester
wensleydale
lancashire cheese
caerphilly
american cheese			processed cheese | process cheese | cheese food | burger cheese | processed cheese loaf
garlic and herb cheese			herbed cheese
kashkaval
bryndza
smoked cheese
queso asadero
limburger
caciocavallo			cacio cavallo
scamorza
kefalotyri			kefalotiri
graviera
mizithra
# The same, but neither sweet nor savory by itself.
@marks uncounted dairy cooked
cheese		generic	hard cheese | soft cheese | melting cheese
ricotta			ricotta cheese | whole milk ricotta | part skim ricotta | part skim ricotta cheese | whole milk ricotta cheese
mascarpone			mascarpone cheese
cream cheese			light cream cheese | full fat cream cheese | low fat cream cheese | reduced fat cream cheese | soft cream cheese
neufchatel	neufchatel cheese		neufchatel cheese
cottage cheese			low fat cottage cheese
farmer's cheese			farmers cheese | farmer cheese
tvorog			twarog
vegan cheese			dairy free cheese

# --- meat ---
@forms noun
@marks uncounted poultry savory
chicken			chook | whole chicken | chicken meat | chicken piece | roasting chicken | fryer chicken | stewing hen | frying chicken | chicken part | chicken strip
@marks poultry savory
chicken breast			chicken breast half | breast of chicken | boneless skinless chicken breast half | chicken cutlet | chicken breast meat | skinless chicken breast half | chicken escalope
chicken breast halves	chicken breast	plural	boneless skinless chicken breast halves | skinless boneless chicken breast halves	none
chicken thigh			thigh of chicken | chicken thigh meat
# Cuts without their animal: chicken, unless another one was named.
thigh	chicken thigh
wing	chicken wing
breast	chicken breast
drumstick	chicken drumstick		chicken drumstick | chicken drum
chicken leg			chicken leg quarter | chicken quarter | chicken maryland
chicken wing			chicken wingette | party wing
chicken tender			chicken tenderloin | chicken goujon
chicken liver
chicken carcass
chicken neck
chicken giblet			giblet
chicken foot
chicken heart
chicken gizzard			gizzard
chicken skin
chicken bone
cornish hen	cornish game hen		cornish game hen | cornish rock hen | game hen | poussin
turkey			whole turkey | turkey meat
turkey breast			turkey cutlet | turkey escalope | turkey tenderloin | turkey crown | turkey joint
turkey leg			turkey drumstick | turkey wing
turkey thigh
turkey neck
duck			whole duck | duckling
duck breast			magret
duck leg
goose
quail
pheasant
partridge
pigeon			squab
guinea fowl
grouse
ostrich steak
@forms none
@marks uncounted ground savory
ground beef			minced beef | beef mince | hamburger meat | lean ground beef | ground chuck | ground round | ground sirloin | lean beef mince | extra lean ground beef | minced steak | steak mince | mince beef | hamburger | burger meat | lean hamburger
ground pork			pork mince | minced pork | lean ground pork | mince pork
ground turkey		poultry	turkey mince | minced turkey | lean ground turkey
ground chicken		poultry	chicken mince | minced chicken
ground lamb			lamb mince | minced lamb
ground veal			veal mince | minced veal
ground venison
venison sausage
boudin			boudin blanc
ground meat		generic	minced meat | meatloaf mix
sausage meat			sausagemeat | bulk sausage | pork sausage meat | ground sausage | breakfast sausage meat | ground pork sausage | bulk pork sausage | bulk italian sausage
@forms noun
@marks ground savory
sausage			pork sausage | breakfast sausage | cumberland sausage | lincolnshire sausage | beef sausage | chipolata | fresh sausage | banger | sausage link | breakfast sausage link | chicken snag | snag | lorne sausage | square sausage | beef link
italian sausage			sweet italian sausage | hot italian sausage | mild italian sausage | fennel sausage | spicy italian sausage
bratwurst			brat | german sausage
chicken sausage		poultry	turkey sausage
lamb sausage			merguez
boerewors
toulouse sausage
# Mexican chorizo is raw and Spanish chorizo is cured: the name alone counts as raw, to be safe.
chorizo
fresh chorizo	chorizo		mexican chorizo | cooking chorizo
black pudding			blood sausage | morcilla | boudin noir | drisheen
white pudding
haggis
sausage patty
burger patty			beef patty | hamburger patty
frozen meatball
@marks meat savory
beef		uncounted	beef meat | beef joint | beef roast | roast beef joint | beef steak | stewing steak
beef chuck		uncounted	chuck roast | chuck steak | beef chuck roast | boneless beef chuck | braising steak | braising beef | beef shoulder | blade steak | pot roast meat | chuck beef | beef chuck steak | casserole steak | feather blade | beef skirt | skirt of beef
stew beef	stewing beef	uncounted	stewing beef | beef stew meat | stew meat | beef stewing meat | stewing meat | beef for stew | beef cube
beef brisket			brisket
corned beef brisket	corned beef		corned beef | salt beef
beef short rib			short rib | galbi | flanken rib
beef cheek
ox cheek	beef cheek
oxtail			ox tail
beef shank			beef shin | shin beef | shin of beef
rump roast			round roast | eye of round | bottom round | top round | silverside | topside | sirloin tip roast | beef rump | bottom round roast
rib roast			prime rib | standing rib roast | rib of beef
beef tenderloin			beef fillet | fillet of beef | filet mignon | fillet steak
steak		generic	minute steak | cube steak | swiss steak
ribeye	ribeye steak		rib eye | ribeye steak | rib eye steak | scotch fillet | entrecote | tomahawk steak | tomahawk
sirloin steak			sirloin | top sirloin | new york strip | strip steak | strip loin | top sirloin steak | beef sirloin | porterhouse | t bone steak | t bone
picanha			rump cap | sirloin cap | culotte
flank steak			flank | bavette | london broil
skirt steak			hanger steak | onglet | carne asada meat | fajita meat
flat iron steak
rump steak			round steak | top round steak
beef liver
beef bone			marrow bone | soup bone | bone marrow
tripe		uncounted
chitterling			chitlin
braciole
beef roll			rouladen
neck bone			pork neck bone | beef neck bone
tri tip		uncounted	tri tip steak | tri tip roast
beef heart
veal		uncounted
veal cutlet			veal scallopini | veal escalope
veal shank			osso buco shank
calf's liver			calves liver | lamb's liver | lambs liver
kidney			lamb's kidney | lamb kidney
sweetbread
bison		uncounted
pork		uncounted	pork meat | pork joint | pork roast | pork cube
pork shoulder			pork butt | boston butt | shoulder of pork | pork collar | pork neck | pork shoulder roast | picnic shoulder
pork belly		uncounted	belly pork | belly of pork
pork loin			loin of pork | pork loin roast | boneless pork loin
pork tenderloin			pork fillet
pork chop			pork loin chop | boneless pork loin chop | boneless pork chop | pork cutlet | pork steak | pork escalope
pork rib			spare rib | sparerib | baby back rib | pork spare rib | pork sparerib | back rib | st louis rib | country style rib | baby back | baby back spare rib | rib rack
pork hock			ham hock | pork knuckle | smoked ham hock | trotter | pork trotter | pig's foot | ham bone | gammon hock | kasseler knuckle | eisbein
pork cheek
pork liver
pork skin	pork rind		pork rind | crackling
pork leg			leg of pork | fresh ham
suckling pig
gammon			gammon joint | gammon steak
caul fat
# "ribs" of celery are stalks.
ribs	rib	plural		none
rack of lamb
lamb		uncounted	lamb meat | stewing lamb | lamb stew meat | hogget
lamb leg	leg of lamb		leg of lamb | boneless leg of lamb
hogget leg	hogget leg	uncounted	leg of hogget | hogget shoulder | shoulder of hogget
lamb shoulder			shoulder of lamb
lamb chop			lamb cutlet | lamb loin chop | lamb rib chop
veal chop
lamb shank
lamb neck			neck fillet | lamb neck fillet | neck of lamb | scrag end | scrag end of lamb | scrag
lamb loin
lamb rib
mutton		uncounted
goat		uncounted	goat meat
venison		uncounted
venison loin	venison	uncounted	loin of venison | venison haunch | haunch of venison
venison steak
rabbit
hare
wild boar
meat		uncounted generic	red meat
@forms none
@marks uncounted savory
bacon		meat	streaky bacon | back bacon | bacon strip | bacon rasher | slab bacon | thick cut bacon | smoked bacon | bacon lardon | bacon bit | rindless bacon | turkey bacon | center cut bacon | unsmoked bacon | bacon joint | bacon loin | collar of bacon
bacon strips	bacon	meat plural	bacon rashers | bacon bits | bacon lardons	none
pancetta		meat		none
lardon		meat		noun
guanciale		meat
salt pork		meat	fatback
canadian bacon		cooked
@marks uncounted cooked savory
ham			cooked ham | baked ham | smoked ham | deli ham | black forest ham | honey ham | boiled ham | ham steak
country ham
prosciutto			parma ham | serrano ham | jamon | jamon serrano | iberico ham | bayonne ham | speck | presunto | jamon iberico
bresaola
pastrami
roast beef			deli roast beef
salami			genoa salami | soppressata
pepperoni
mortadella			bologna
coppa			capicola
nduja	'nduja		'nduja
pate			liver pate | liver sausage | liverwurst
foie gras
luncheon meat			tinned ham
deli meat		generic	cold cuts | lunch meat | sandwich meat
jerky			beef jerky | biltong
rotisserie chicken			roast chicken | canned chicken
deli turkey			smoked turkey | smoked turkey breast
pulled pork
confit duck	duck confit		duck confit
@forms noun
@marks uncounted cooked savory
spanish chorizo	chorizo		cured chorizo | dry chorizo
smoked sausage			kielbasa | andouille | andouille sausage | polish sausage | frankfurter | linguica | kabanos | smoked kielbasa | rookworst | csaba sausage | falukorv
hot dog			wiener | vienna sausage | cocktail sausage
lap cheong			chinese sausage
gyro meat			kebab meat

# --- fish and shellfish ---
@forms noun
@marks uncounted fish savory
fish		generic	fish fillet | fish steak | whole fish | fish piece | oily fish
white fish			firm white fish | flaky white fish | firm fish | snoek
salmon			salmon steak | salmon portion | side of salmon | salmon filet | wild salmon | sockeye salmon	noun:salmon
cod			cod loin | black cod | cod filet | blue cod | cod tongue | cod cheek	noun:cod
haddock
smoked haddock			finnan haddie | arbroath smokie
kipper
salt cod			bacalao | saltfish | salt fish | dried cod
fish cake
fish stick			fish finger | fish fingers
pollock			pollack | coley | saithe
hake
halibut			halibut steak | halibut cheek	noun:halibut
monkfish			monkfish tail
tilapia
catfish			basa
sea bass			seabass | branzino | bass | chilean sea bass | striped bass | barramundi	noun:bass
sea bream			bream | dorade | gilthead bream	noun:bream
snapper			red snapper
grouper
mahi mahi	mahi-mahi		mahi
swordfish			swordfish steak
tuna steak	tuna		fresh tuna | raw tuna | ahi | ahi tuna | yellowfin tuna | sushi grade tuna | bluefin
trout			rainbow trout | sea trout	noun:trout
mackerel			spanish mackerel	noun:mackerel
herring			matjes | matjes herring | salted herring | salt herring
sardine			fresh sardine
pilchard
sprat
bloater
boquerone			boquerones
sole			lemon sole | dover sole | flounder | fluke
plaice
turbot
brill
john dory
skate			skate wing | ray wing
rockfish			ocean perch | redfish
perch
pike
walleye
carp				noun:carp
eel
smoked eel		cooked
arctic char
whiting
whitebait
red mullet			mullet
kingfish			hamachi | yellowtail
pompano
orange roughy
shark
sturgeon
fish head			fish bone
salmon roe	fish roe	uncounted	ikura | tobiko | masago | roe | caviar | fish roe | cod roe
@forms none
@marks uncounted fish cooked savory
smoked salmon			lox | cold smoked salmon | hot smoked salmon | gravlax
smoked mackerel
smoked trout
smoked fish
tuna			canned tuna | tinned tuna | tuna fish | tuna in oil | tuna in water | albacore tuna | canned tuna in water | canned tuna in oil | tuna in brine
canned salmon			tinned salmon | pink salmon
canned sardine			tinned sardine
anchovy			tinned anchovy	noun
anchovy paste
pickled herring			rollmop
bonito flake			katsuobushi | dried bonito	noun
dried anchovy			ikan bilis	noun
imitation crab			crab stick | surimi	noun
@forms noun
@marks shellfish savory
shrimp			tiger shrimp | prawn | tiger prawn | king prawn | jumbo shrimp | green prawn | rock shrimp | grey shrimp
cold water prawn		cooked	baby shrimp | bay shrimp
dried shrimp		uncounted	dried prawn	none
shrimp paste		uncounted	belacan | terasi | trassi | trasi | kapi | belachan | balachan	none
langoustine			scampi | dublin bay prawn
crayfish			crawfish | crawdad | crawfish tail
lobster			lobster tail | whole lobster | lobster meat | rock lobster
crab			whole crab | blue crab | dungeness crab | crab leg | soft shell crab | brown crab | crab claw | king crab
crabmeat		uncounted cooked	crab meat | lump crab | lump crab meat | lump crabmeat | white crab meat | canned crab | brown crab meat | crab flake
mussel			blue mussel | green lipped mussel
clam			littleneck clam | littleneck | cherrystone | cockle | vongole | manila clam | surf clam | pipi | tuatua
razor clam
winkle			periwinkle
canned clam		uncounted cooked	minced clam | tinned clam
scallop			sea scallop | bay scallop | king scallop | queen scallop
oyster			fresh oyster | shucked oyster
smoked oyster		cooked
squid		uncounted	calamari | squid ring | calamari ring | squid tube
octopus			baby octopus
cuttlefish
abalone
conch
whelk
sea urchin			uni
snail			escargot
seafood		uncounted generic	mixed seafood | seafood mix | shellfish | fruits de mer	none

# --- flour, grain, starch ---
@forms none
@marks uncounted flour
flour			all purpose flour | all purpose | plain flour | ap flour | white flour | unbleached flour | unbleached all purpose flour | plain white flour | wheat flour | 00 flour | double zero flour | tipo 00 flour | a p flour | regular flour | tipo 00 | tipo 0
bread flour			strong flour | strong white flour | strong white bread flour | strong bread flour | white bread flour | high gluten flour | baker's flour
maida	all-purpose flour
self raising flour	self-rising flour		self rising flour | self raising | self rising
cake flour
pastry flour
whole wheat flour			wholemeal flour | wholemeal | wholewheat flour | whole meal flour | whole wheat pastry flour | white whole wheat flour | strong wholemeal flour | atta flour | atta | wholegrain flour | graham flour | brown flour
chapati flour	whole wheat flour		coarse chapati flour | chapatti flour
rye flour			rye | dark rye flour | light rye flour | pumpernickel flour | wholegrain rye flour
spelt flour			white spelt flour
buckwheat flour
oat flour
barley flour
millet flour			bajra flour
sorghum flour			guinea corn flour | jowar flour
teff flour
rice flour			white rice flour | brown rice flour
glutinous rice flour			sweet rice flour | mochiko
chickpea flour			gram flour | besan | garbanzo flour | besan flour | roasted chickpea flour
coconut flour
almond flour	ground almond		almond meal | ground almonds | ground almond | blanched almond flour
hazelnut flour			ground hazelnuts
chestnut flour
soy flour
lupin flour
cassava flour			garri
egusi			egusi seed | ground egusi
gluten free flour	gluten-free flour		gluten free flour blend | gluten free plain flour
vital wheat gluten			wheat gluten | gluten flour
semolina			semola | semolina flour | fine semolina | coarse semolina | sooji | suji | rava | durum flour
corn flour
masa harina			masa | instant corn masa | instant masa
cornmeal			corn meal | yellow cornmeal | white cornmeal | fine cornmeal
polenta			instant polenta | quick cook polenta
grits			quick grits | stone ground grits | hominy grits
tempura flour			tempura batter mix
# In British and Australian kitchens cornflour, one word, is the starch.
cornstarch			cornflour | corn starch | maize starch | maizena
potato starch			potato flour
tapioca starch			tapioca flour
arrowroot			arrowroot powder | arrowroot flour | arrowroot starch
tapioca			tapioca pearl | instant tapioca | minute tapioca | quick cooking tapioca | sago | small pearl tapioca | sabudana | sago pearl
custard powder
wheat starch
sweet potato starch
@marks uncounted
oat			rolled oat | porridge oat | old fashioned oat | quick oat | jumbo oat | oatmeal | quick cooking oat | instant oat | quick oatmeal | pinhead	noun
steel cut oat			pinhead oatmeal | irish oat | pinhead oat | steel cut oatmeal	noun
oat bran
wheat bran			bran
wheat germ
granola			muesli
cereal		generic	breakfast cereal
cornflake			corn flake | cornflake crumb | corn flake cereal | corn flakes cereal | bran flake | bran cereal	noun
puffed rice			rice cereal | crispy rice cereal | crisp rice cereal | rice crispy | puffed rice cereal | murmura
porridge
rice		generic aside	long grain rice | white rice | long grain white rice | steamed rice | plain rice | day old rice | medium grain rice | easy cook rice | converted rice | parboiled rice | fragrant rice | uncooked rice | uncooked long grain rice
basmati rice		aside	basmati | white basmati | brown basmati | brown basmati rice
jasmine rice		aside	jasmine | thai rice
brown rice		aside	long grain brown rice
wild rice		aside	wild rice mix
arborio rice			risotto rice | arborio | carnaroli | carnaroli rice
sushi rice	short-grain rice		short grain rice | japanese rice | calrose rice
glutinous rice			sticky rice | sweet rice | malagkit | malagkit rice
paella rice			bomba rice
pudding rice
red rice
black rice			forbidden rice
instant rice		aside	minute rice | quick cooking rice | microwave rice
broken rice
poha	flattened rice		flattened rice
rice paper			rice paper wrapper | spring roll rice paper | rice paper sheet	noun
rice cake			tteok | tteokbokki | korean rice cake	noun
quinoa		aside	red quinoa | white quinoa
couscous		aside	cous cous
giant couscous	pearl couscous		pearl couscous | israeli couscous | moghrabieh | maftoul
bulgur			bulgur wheat | bulghur | bulghur wheat | cracked wheat | bulghar | burghul
freekeh
farro			pearled farro
spelt			pearled spelt
pearl barley			barley | pearled barley | pot barley | quick cooking barley
buckwheat			buckwheat groats | kasha
millet			bajra
amaranth
teff
sorghum			jowar
fonio
rye berry				noun
wheat berry				noun
popcorn			popping corn | popcorn kernel | popped popcorn | pop corn
grain		generic		noun

# --- pasta and noodles ---
@forms none
@marks uncounted savory
pasta		generic	pasta shell | dried pasta | short pasta | fresh pasta | pasta shape | long pasta | whole wheat pasta | tubular pasta | small pasta | soup pasta | gluten free pasta
spaghetti			spaghettini | thin spaghetti | angel hair | angel hair pasta | capellini | vermicelli pasta | spaghetti noodle
linguine			linguini
fettuccine			fettuccini | fettucine
tagliatelle
pappardelle
bucatini
tagliolini
mafaldine
penne			penne pasta | penne rigate | mostaccioli
rigatoni			ziti | paccheri | rigatoni pasta
macaroni			elbow macaroni | elbow pasta | elbows | macaroni elbow | cavatappi | macaroni noodle
fusilli			rotini | spiral pasta | fusilli pasta | gemelli | spirali | rotini pasta
farfalle			bow tie pasta | bow ties | bowtie pasta | bow tie
conchiglie	pasta shells		pasta shells | jumbo shells | jumbo pasta shells | shell pasta | small shells
orecchiette
orzo			risoni | orzo pasta
ditalini			ditali
casarecce
trofie
strozzapreti
cavatelli
radiatori
campanelle
stelline			alphabet pasta | pastina
fregola
cannelloni			manicotti | cannelloni tube | manicotti shell
lasagna sheet			lasagne sheet | lasagna noodle | lasagne noodle | sheets of lasagna | fresh lasagne sheet | no boil lasagna noodle	noun
tortellini			cheese tortellini | tortelloni | fresh tortellini
ravioli			cheese ravioli
gnocchi			potato gnocchi
spaetzle			spatzle
pierogi			pelmeni
noodle		generic	asian noodle | fresh noodle | wheat noodle | stir fry noodle | dried noodle | hokkien noodle	noun
egg noodle			wide egg noodle | chinese egg noodle | medium egg noodle | lo mein noodle | chow mein noodle | wonton noodle | lo mein | dried egg noodle	noun
rice noodle			rice vermicelli | rice stick | rice stick noodle | vermicelli rice noodle | pad thai noodle | flat rice noodle | vermicelli noodle | ho fun | rice vermicelli noodle | bihon noodle | sevai	noun
glass noodle			cellophane noodle | bean thread noodle | bean thread | sweet potato noodle | mung bean noodle | dangmyeon	noun
soba noodle			soba | buckwheat noodle	noun
udon noodle			udon	noun
ramen noodle			ramen | instant noodle | instant ramen | dried ramen noodle	noun
somen noodle			somen	noun
vermicelli
shirataki noodle			konjac noodle | konjac	noun
dumpling wrapper			gyoza wrapper | gyoza skin | potsticker wrapper | dumpling skin	noun
wonton wrapper			wonton skin | wonton | won ton wrapper | won ton skin	noun
egg roll wrapper			eggroll wrapper | spring roll wrapper | spring roll pastry | spring roll skin | lumpia wrapper | spring roll sheet | spring roll paper	noun

# --- pulses ---
@forms noun
@marks uncounted savory
bean		generic	dried bean | mixed bean | canned bean | tinned bean
black bean			canned black bean | dried black bean | turtle bean | tinned black bean | black turtle bean
kidney bean			red kidney bean | red bean | canned kidney bean | dark red kidney bean | dried kidney bean | light red kidney bean | rajma
pinto bean			canned pinto bean | dried pinto bean | borlotti bean | cranberry bean | borlotti | pinto
white bean			cannellini bean | great northern bean | navy bean | haricot bean | cannellini | canned white bean | dried white bean | small white bean | haricot
butter bean			lima bean | gigante bean | baby lima bean | frozen lima bean
chickpea			garbanzo bean | garbanzo | chick pea | canned chickpea | dried chickpea | tinned chickpea | chana | kabuli chana | channa
black eyed pea	black-eyed pea		black eyed bean | cowpea | field pea | beans honey | lobia
pigeon pea			gungo pea | gandules
lentil		generic	dried lentil
green lentil			puy lentil | french lentil | french green lentil
brown lentil
red lentil			split red lentil | masoor dal | orange lentil
black lentil			beluga lentil | urad dal | urad | black gram
split pea			yellow split pea | green split pea | chana dal | toor dal
roasted gram		uncounted	pottukadalai | fried gram | roasted chana dal
mung bean			moong dal | mung dal | split mung bean
marrowfat pea			mushy pea
adzuki bean			azuki bean
flageolet bean			flageolet
soybean			soya bean | soy bean
lupin bean			lupini bean | lupini | lupin
dal		generic	dhal | daal
baked bean		cooked	canned baked bean | pork and beans
refried bean		cooked
fermented black bean		cooked	salted black bean | douchi
red bean paste		cooked	sweet bean paste | anko	none
pulses	pulse	generic plural		none
legume	pulse	generic
@forms none
@marks uncounted
tofu		savory	firm tofu | extra firm tofu | bean curd | medium tofu | super firm tofu
silken tofu			soft tofu
smoked tofu		savory
tofu puff		savory	fried tofu | deep fried tofu	noun
tempeh		savory
seitan		savory
plant based mince	plant-based mince	savory	vegan mince | veggie mince | soy mince | meatless crumbles | vegetarian mince | vegan ground beef
vegetarian sausage		savory	vegan sausage | veggie sausage | meatless sausage	noun
soy protein	textured vegetable protein	savory	tvp | textured vegetable protein | soy curl | soya chunks | soya mince
yuba		savory	tofu skin | bean curd skin
natto		savory
okara		savory
aquafaba			chickpea water | chickpea liquid
flax egg				noun
nutritional yeast		savory	nooch | nutritional yeast flakes
oat milk			oat drink
almond milk			unsweetened almond milk | vanilla almond milk
soy milk			soya milk | soymilk
rice milk
cashew milk
plant milk		generic	non dairy milk | dairy free milk | vegan milk | plant based milk | nut milk
hemp milk
soy cream	plant cream		oat cream | vegan cream | plant cream | dairy free cream
coconut yogurt			coconut yoghurt | soy yogurt | soya yogurt | soya yoghurt | soy yoghurt | dairy free yogurt | vegan yogurt | oat yogurt | oat yoghurt | almond yogurt | vegan yoghurt | plant based yogurt | plant yogurt | dairy free yoghurt
vegan mayonnaise		savory	vegan mayo
vegan cream cheese
vegan parmesan		savory
agar			agar agar | agar powder | gulaman | gulaman powder
egg replacer

# --- nuts and seeds ---
@forms noun
@marks uncounted
almond			whole almond | blanched almond | almond half | marcona almond
flaked almond			sliced almond | slivered almond | almond flake | almond sliver
walnut			walnut half | english walnut | black walnut | wall nut
pecan			pecan half | pecan nut
hazelnut			filbert | cobnut
cashew			cashew nut | roasted cashew
pistachio			pistachio nut
macadamia			macadamia nut
brazil nut
pine nut			pignoli | pine kernel | pinenut | pinon
peanut			roasted peanut | groundnut | monkey nut | salted peanut | dry roasted peanut | pea nut
chestnut			roasted chestnut | vacuum packed chestnut
candlenut			candle nut
tiger nut
nut		generic	mixed nut
candied pecan			candied walnut
honey roasted peanut
walnut halves	walnut	plural		none
pecan halves	pecan	plural		none
sesame seed			white sesame seed | sesame
black sesame seed
sunflower seed			sunflower kernel
pumpkin seed			pepita
poppy seed			poppyseed | white poppy seed | khus khus
chia seed			chia
flaxseed			flax seed meal | flax | ground flax | flax seed | linseed | ground flaxseed | flax meal | flaxseed meal | golden linseed
hemp seed			hemp heart
melon seed			magaz
mixed seed		generic	seed mix
basil seed
@forms none
peanut butter			smooth peanut butter | crunchy peanut butter | creamy peanut butter | chunky peanut butter | natural peanut butter
almond butter
cashew butter
nut butter		generic
sunflower seed butter			sunflower butter
tahini			tahini paste | sesame paste | tahina
hazelnut spread	chocolate-hazelnut spread		chocolate hazelnut spread | chocolate spread
praline			praline paste | hazelnut paste
marzipan			almond paste
pistachio paste

# --- sugar, syrup, baking ---
@marks uncounted sweet
caster sugar			superfine sugar | castor sugar | golden caster sugar | fine sugar | bakers sugar
powdered sugar			powder sugar | icing sugar | confectioners' sugar | confectioners sugar | confectioner's sugar | confectioner sugar | ice sugar | icing powder
demerara sugar			turbinado sugar | raw sugar | demerara | turbinado
coarse sugar			sanding sugar | pearl sugar | decorating sugar | sparkling sugar
maple sugar
vanilla sugar			vaniljsocker
cinnamon sugar
jam sugar			preserving sugar
date sugar
sugar cube				noun
golden sugar	caster sugar
golden syrup
corn syrup			light corn syrup
dark corn syrup
cane syrup			pure cane syrup
date syrup
glucose	glucose syrup		glucose syrup | liquid glucose
simple syrup			sugar syrup
pancake syrup
syrup		generic
grenadine
sorghum syrup
elderflower cordial			elderflower syrup
caramel			caramel sauce | caramel topping | salted caramel | salted caramel sauce | toffee sauce | butterscotch sauce
fudge sauce			hot fudge sauce | hot fudge
chocolate syrup
chocolate sauce
invert sugar
# The same, but neither sweet nor savory by itself.
@marks uncounted
sugar			sugars | granulated sugar | white sugar | regular sugar | cane sugar | white granulated sugar | beet sugar
brown sugar			soft brown sugar
light brown sugar			light muscovado sugar | soft light brown sugar | light muscovado | light soft brown sugar | golden brown sugar
dark brown sugar			dark muscovado sugar | soft dark brown sugar | muscovado sugar | muscovado | dark soft brown sugar | dark muscovado
palm sugar			jaggery | gur | piloncillo | panela | gula jawa | nolen gur | date palm jaggery | palm jaggery | sugarcane jaggery
coconut sugar
rock sugar
sweetener		generic	liquid stevia | granular sweetener blend | sugar substitute | artificial sweetener | stevia | erythritol | monk fruit sweetener | xylitol | granular sweetener
honey			runny honey | clear honey | liquid honey | manuka honey | thyme honey | heather honey | acacia honey | clover honey | chestnut honey
maple syrup			pure maple syrup
strawberry syrup
fruit syrup
molasses			treacle | black treacle | blackstrap molasses | unsulfured molasses | fancy molasses | cooking molasses
agave	agave syrup		agave syrup | agave nectar
rice syrup			brown rice syrup
pomegranate molasses
barley malt syrup	malt syrup		malt syrup | malt extract
@marks uncounted leavening
baking powder			double acting baking powder
baking soda			bicarbonate of soda | bicarb | bicarb soda | bicarb of soda | sodium bicarbonate | bicarbonate | bread soda
fruit salt			eno | eno fruit salt
soda	baking soda
yeast			active yeast | active dry | active dry yeast | dry yeast | dried yeast | dried active yeast | active dried yeast | packet yeast
instant yeast			fast action yeast | easy bake yeast | rapid rise yeast | quick yeast | fast acting yeast | fast action dried yeast | bread machine yeast | instant dried yeast | instant dry yeast | easy blend yeast | quick rise yeast
fresh yeast			cake yeast | compressed yeast
sourdough starter			levain | starter | sourdough discard | poolish | biga | leaven
baker's ammonia
@marks uncounted sweet
flavored gelatin			jelly crystal | gelatin dessert mix | flavored gelatin mix | strawberry gelatin | lime gelatin | raspberry gelatin | raspberry jelly crystal | strawberry jelly crystal | jelly powder
vanilla extract	vanilla		vanilla | pure vanilla extract | pure vanilla | vanilla essence | vanilla flavoring
vanilla paste			vanilla bean paste
vanilla powder
almond extract			almond essence
lemon extract			lemon essence
orange extract			orange oil
peppermint extract			mint extract | peppermint oil | peppermint essence
coconut extract			coconut essence
maple extract			maple flavoring
rum extract
banana extract
pandan extract			pandan essence
pandan paste		uncounted
coffee extract
food coloring			pink colouring | pink coloring | red colouring | green colouring | yellow colouring | blue colouring | orange colouring | black colouring | food color | food colour | paste food coloring | food colouring | red food coloring | gel food coloring | green food coloring | food dye | yellow food coloring | red food colouring | gel food colouring
cocoa powder			cocoa | unsweetened cocoa powder | unsweetened cocoa | dutch process cocoa | dutch process cocoa powder | dutch cocoa | natural cocoa | natural cocoa powder | cacao powder | baking cocoa | cacao
hot chocolate mix	hot chocolate powder		hot chocolate powder | drinking chocolate | cocoa mix
cacao nib			cocoa nib	noun
cocoa butter		fat
chocolate		generic	cooking chocolate | baking chocolate
chocolate shaving	chocolate		chocolate bar | chocolate curl | chocolate square	noun
dark chocolate			bittersweet chocolate | plain chocolate | semisweet chocolate | semi sweet chocolate | 70 percent chocolate | unsweetened chocolate | couverture | unsweetened baking chocolate | bitter chocolate
milk chocolate
white chocolate
chocolate chip			semisweet chocolate chip | semi sweet chocolate chip | dark chocolate chip | chocolate morsel | chocolate chunk | mini chocolate chip | semi sweet chocolate morsel | bittersweet chocolate chip	noun
milk chocolate chip				noun
white chocolate chip			vanilla chip	noun
baking chip		generic		noun
peanut butter cup				noun
malted milk ball				noun
candy corn
trail mix
peanut butter chip				noun
butterscotch chip				noun
cinnamon chip				noun
caramel bit	caramel candy		caramel candy | soft caramel | chewy caramel	noun
toffee			toffee bit
chocolate candy			chocolate button	noun
candy cane			peppermint candy	noun
candy melt			candy coating | almond bark | chocolate coating	noun
sprinkles			hundreds and thousands | nonpareils | jimmies | rainbow sprinkles | chocolate sprinkles | sugar strands
marshmallow			mini marshmallow | miniature marshmallow | marsh mallow | mini marsh mallow	noun
marshmallow fluff	marshmallow creme		marshmallow creme | marshmallow cream
fondant			fondant icing | ready to roll icing | royal icing
gummy candy			gumdrop | jelly bean | gummy bear	noun
licorice			liquorice
candy		generic	hard candy	noun
crystallized ginger			candied ginger | crystallised ginger | stem ginger | glace ginger
turkish delight
nougat
honeycomb			cinder toffee
popping candy
peanut brittle
fudge
cake mix			yellow cake mix | white cake mix | chocolate cake mix | box cake mix | vanilla cake mix | devil's food cake mix | devils food cake mix | lemon cake mix | german chocolate cake mix
brownie mix
pancake mix			pancake and waffle mix
pudding mix			instant pudding | instant vanilla pudding | vanilla pudding mix | instant pudding mix | instant vanilla pudding mix | instant chocolate pudding | chocolate pudding mix | instant chocolate pudding mix
muffin mix
dream topping	whipped topping mix		whipped topping mix
pie filling			cherry pie filling | apple pie filling | blueberry pie filling
mincemeat			mince pie filling
lemon curd			orange curd | lime curd | passion fruit curd
jam		generic	preserves | fruit preserve | fruit jam
strawberry jam			strawberry preserves
raspberry jam			raspberry preserves | seedless raspberry jam | raspberry jelly
apricot jam			apricot preserves
blackberry jam
blueberry jam
plum jam
fig jam			fig preserves | fig paste
peach preserves	peach jam		peach jam
lingonberry jam
cherry jam			cherry preserves
marmalade			orange marmalade | thick cut marmalade
quince paste			membrillo | quince jelly
grape jelly
apple jelly
apple butter
guava paste
jelly		generic	fruit jelly
fruit compote			compote | fruit puree | coulis
raspberry puree			raspberry coulis | strawberry puree
# The same, but neither sweet nor savory by itself.
@marks uncounted
cream of tartar
citric acid			tartaric acid
gelatin			gelatine | gelatin powder | unflavored gelatin | powdered gelatin | powdered gelatine | gelatine leaf | leaf gelatine | sheet gelatin | gelatin sheet | unflavoured gelatine
pectin			powdered pectin | liquid pectin
xanthan gum			xanthan
guar gum
cornstarch slurry
extract		generic
biscuit mix			baking mix | all purpose baking mix
cornbread mix			corn muffin mix
bread mix
stuffing mix			stuffing cube | herb stuffing mix
pumpkin puree			canned pumpkin | pureed pumpkin | solid pack pumpkin | pumpkin pulp | canned pumpkin puree
sweet potato puree
redcurrant jelly			red currant jelly | currant jelly
cranberry sauce			cranberry jelly | jellied cranberry sauce | whole berry cranberry sauce | cranberry relish
mint jelly
pepper jelly			chilli jam | chili jam | hot pepper jelly | red pepper jelly

# --- oils and fats ---
@forms none
@marks uncounted fat
oil		generic	cooking oil | neutral oil | frying oil | light oil | neutral flavored oil | salad oil | flavourless oil | neutral cooking oil | oil for frying
olive oil			light olive oil | pure olive oil | good olive oil | regular olive oil | mild olive oil
extra virgin olive oil			evoo | ev olive oil | virgin olive oil
vegetable oil			veg oil | veggie oil | vegetable cooking oil
canola oil			rapeseed oil | cold pressed rapeseed oil
sunflower oil			sunflower seed oil
corn oil
peanut oil			groundnut oil
soybean oil
safflower oil
grapeseed oil			grape seed oil
avocado oil
rice bran oil
sesame oil			toasted sesame oil | dark sesame oil | light sesame oil | asian sesame oil | roasted sesame oil | gingelly oil
coconut oil			refined coconut oil | virgin coconut oil
walnut oil
hazelnut oil
almond oil
mustard oil
palm oil			red palm oil
flaxseed oil
truffle oil			white truffle oil
chili oil			chilli oil | chile oil | hot chili oil
garlic oil			garlic infused oil
lemon oil
pumpkin seed oil
basil oil	herb oil		herb oil | parsley oil
annatto oil			achiote oil | achuete oil
cottonseed oil
lard			leaf lard | pork fat | manteca
shortening			vegetable shortening | white vegetable fat | solid vegetable fat
suet			vegetable suet | beef suet | shredded suet
beef tallow			tallow | beef dripping | dripping | beef fat | beef drippings
duck fat			goose fat
bacon fat			bacon grease | bacon drippings
chicken fat			schmaltz
pan drippings			drippings | pan juices | meat juices | pan juice | meat drippings
fat		generic	cooking fat
cooking spray			nonstick cooking spray | non stick cooking spray | oil spray | nonstick spray | non stick spray | pan spray | baking spray | vegetable cooking spray | olive oil spray | spray oil

# --- vinegars ---
@marks uncounted savory
vinegar		generic	pickling vinegar
white vinegar			distilled vinegar | distilled white vinegar | spirit vinegar | attika
white wine vinegar			champagne vinegar
red wine vinegar
wine vinegar
cider vinegar			apple cider vinegar | apple vinegar
balsamic vinegar			balsamic | aged balsamic
white balsamic vinegar			white balsamic
balsamic glaze			balsamic reduction
rice vinegar			rice wine vinegar | seasoned rice vinegar | sushi vinegar | unseasoned rice vinegar
sherry vinegar
malt vinegar			brown vinegar
black vinegar			chinkiang vinegar | chinese black vinegar
tarragon vinegar
raspberry vinegar
coconut vinegar			cane vinegar | palm vinegar
ponzu			ponzu sauce
verjuice

# --- stocks, canned tomatoes, sauces, pastes ---
@forms none
@marks uncounted cooked savory
stock		generic	broth | bouillon | bone broth | cooking stock
chicken stock			chicken broth | chicken bouillon | low sodium chicken broth | low sodium chicken stock | chicken bone broth | reduced sodium chicken broth | fat free chicken broth | canned chicken broth | chicken consomme
beef stock			beef broth | low sodium beef broth | beef bouillon | beef bone broth | beef consomme | canned beef broth
vegetable stock			vegetable broth | veggie broth | veg stock | veggie stock | vegetable bouillon | low sodium vegetable broth
fish stock			fish fumet | seafood stock | shrimp stock | fish broth | shellfish stock
lamb stock
veal stock			demi glace | demiglace
turkey stock			turkey broth
ham stock			ham broth
mushroom stock			mushroom broth | mushroom soaking liquid
dashi			dashi stock
consomme
stock cube			bouillon cube | seasoning cube | soup cube | chicken cube | vegetable cube | broth cube	noun
chicken stock cube			chicken bouillon cube | chicken bouillon granules | chicken base	noun
beef stock cube			beef bouillon cube | beef bouillon granules | beef base	noun
vegetable stock cube			vegetable bouillon cube | vegetable base	noun
bouillon paste			stock concentrate | bouillon base
fish stock cube				noun
@forms noun
@marks uncounted cooked savory
canned tomato			tinned tomato | canned whole tomato | whole peeled tomato | canned plum tomato | tinned plum tomato | canned diced tomato | peeled tomato | whole canned tomato
diced tomato			petite diced tomato
chopped tomato			tinned chopped tomato | canned chopped tomato
crushed tomato			canned crushed tomato
stewed tomato			canned stewed tomato
fire roasted tomato	fire-roasted tomato		fire roasted diced tomato
tomato with green chilies	canned tomatoes with green chiles		tomatoes with green chilies | tomatoes with green chiles | canned green chile | diced green chile | diced green chili | canned green chili | canned green chilies
@forms none
@marks uncounted cooked savory
tomato sauce			canned tomato sauce
tomato puree			passata | strained tomatoes | sieved tomatoes | tomato passata
tomato paste			double concentrate tomato puree | concentrated tomato puree | tomato concentrate
sun dried tomato paste	sun-dried tomato paste
marinara sauce			marinara | pasta sauce | spaghetti sauce | jarred tomato sauce
pizza sauce
alfredo sauce			alfredo
arrabbiata sauce
vodka sauce
bolognese sauce			meat sauce
enchilada sauce			red enchilada sauce | green enchilada sauce
salsa			tomato salsa | salsa roja | chunky salsa | picante sauce
salsa verde			green salsa | tomatillo salsa
pico de gallo
guacamole			guac
taco sauce
adobo sauce			adobo
mole sauce			mole | mole paste
chimichurri
chimichurri sauce	chimichurri
hummus			houmous | hommus
baba ganoush
tzatziki
pesto			basil pesto | pesto sauce | green pesto | pesto alla genovese
red pesto			sun dried tomato pesto
tapenade			olive tapenade
romesco sauce			romesco
bechamel	white sauce		bechamel sauce | white sauce
hollandaise			hollandaise sauce
cheese sauce			nacho cheese | nacho cheese sauce
gravy			brown gravy | turkey gravy | beef gravy | chicken gravy | onion gravy
gravy mix	gravy granules		gravy granules | gravy powder | brown gravy mix
bread sauce
mint sauce
horseradish sauce			prepared horseradish | creamed horseradish | horseradish cream
tartar sauce			tartare sauce
cocktail sauce			seafood sauce | marie rose sauce
remoulade
aioli			garlic mayo | garlic mayonnaise
ranch dressing			ranch | ranch sauce
caesar dressing			caesar salad dressing
italian dressing			greek dressing | italian salad dressing | zesty italian dressing
blue cheese dressing
thousand island dressing			thousand island
french dressing			catalina dressing
vinaigrette			raspberry vinaigrette | vinaigrette dressing | balsamic vinaigrette
salad dressing		generic	coleslaw dressing
condensed soup			cream of mushroom soup | condensed cream of mushroom soup | cream of chicken soup | condensed cream of chicken soup | cream of celery soup | tomato soup | condensed tomato soup | cheddar cheese soup | french onion soup | canned soup | cream of potato soup | cream soup
onion soup mix			dry onion soup mix | soup mix | onion soup powder | vegetable soup mix
@marks uncounted savory
mayonnaise			mayo | light mayonnaise | light mayo | real mayonnaise | low fat mayonnaise | reduced fat mayonnaise
salad cream
japanese mayonnaise			japanese mayo
ketchup			catsup | tomato ketchup | red sauce
mustard		generic	prepared mustard | seedy mustard
yellow mustard			american mustard | prepared yellow mustard
dijon mustard			dijon | smooth dijon mustard
whole grain mustard	whole-grain mustard		wholegrain mustard | grainy mustard | grain mustard | coarse mustard | seeded mustard | stone ground mustard | coarse grain mustard
english mustard			hot mustard
honey mustard
german mustard			brown mustard | spicy brown mustard | creole mustard
barbecue sauce			bbq sauce | barbeque sauce
brown sauce
steak sauce
worcestershire sauce			worcestershire | worcester sauce
hot sauce			pepper sauce | hot pepper sauce | louisiana hot sauce | buffalo sauce | cayenne pepper sauce | wing sauce
sriracha			sriracha sauce
sambal oelek			sambal | sambal ulek | chili garlic sauce | chilli garlic sauce | garlic chili sauce
chili sauce			chilli sauce | tomato chili sauce | hot chili sauce
sweet chili sauce			sweet chilli sauce | thai sweet chili sauce
chili crisp			chilli crisp | crispy chili oil
peri peri sauce			piri piri sauce | piri piri | peri peri
soy sauce			soya sauce | shoyu | regular soy sauce | japanese soy sauce
light soy sauce			light soy
dark soy sauce			dark soy | mushroom soy sauce
low sodium soy sauce	low-sodium soy sauce		reduced sodium soy sauce | reduced salt soy sauce | less sodium soy sauce
soy	soy sauce
sweet soy sauce			kecap manis | sweet soy
tamari			tamari sauce
coconut aminos			liquid aminos
fish sauce			nam pla | nuoc mam | colatura | patis
oyster sauce			vegetarian oyster sauce | mushroom oyster sauce
hoisin sauce			hoisin
plum sauce
teriyaki sauce			teriyaki | teriyaki marinade
black bean sauce			black bean paste | black bean garlic sauce
yellow bean sauce			soybean paste | fermented soybean paste | doenjang
sweet and sour sauce
duck sauce
xo sauce
char siu sauce
bulgogi sauce			bulgogi marinade
stir fry sauce
doubanjiang			chili bean paste | broad bean paste | doubanjang | chilli bean paste | chili bean sauce | spicy bean paste
gochujang			gochujang paste | korean chili paste | korean chilli paste | korean red pepper paste
ssamjang
miso			miso paste | white miso | red miso | yellow miso | white miso paste | brown miso | red miso paste
chili paste			chilli paste | chile paste | calabrian chili | calabrian chili paste | aji amarillo paste | aji amarillo | red chili paste
harissa			harissa paste | rose harissa
curry paste		generic	tikka paste | tikka masala paste | korma paste | madras paste | balti paste | rogan josh paste | tandoori paste | curry sauce
red curry paste			thai red curry paste
green curry paste			thai green curry paste
yellow curry paste			massaman curry paste | panang curry paste
laksa paste
tom yum paste
rendang paste
jerk paste			jerk marinade | jerk sauce
ginger garlic paste			garlic ginger paste
ginger paste			ginger puree
garlic paste			garlic puree
chipotle paste
tahini sauce			tahini dressing
toum
zhug			zhoug | skhug
chermoula
ajvar			red pepper paste | biber salcasi
pepper paste
truffle paste
yeast extract			yeast extract spread | vegemite | marmite
chutney		generic	tomato chutney | onion chutney | apple chutney
mango chutney
mint chutney			coriander chutney | green chutney | cilantro chutney
tamarind chutney			tamarind sauce
lime pickle			mango pickle | indian pickle
onion jam			onion marmalade | caramelized onion chutney | bacon jam
relish		generic	sweet relish | pickle relish | sweet pickle relish | dill relish | dill pickle relish
piccalilli
giardiniera
cream of mushroom	condensed soup		cream of chicken | cream of celery
# The same, but neither sweet nor savory by itself.
@marks uncounted
peanut sauce			satay sauce
coconut milk			full fat coconut milk | light coconut milk | canned coconut milk | tinned coconut milk | unsweetened coconut milk | reduced fat coconut milk | santan | thick coconut milk | thin coconut milk | coconut milk from a can
coconut cream			creamed coconut
coconut water
cream of coconut

# --- pickles, olives ---
@forms noun
@marks cooked savory
olive		generic	mixed olive
black olive			greek olive | kalamata olive | kalamata | ripe olive | nicoise olive
green olive			castelvetrano olive | stuffed olive | spanish olive | pimento stuffed olive | manzanilla olive | stuffed green olive
caper		uncounted	nonpareil caper | salted caper | baby caper
caperberry			caper berry
# "pickle" is a verb too (actions.lex).
pickle			dill pickle | pickled cucumber | pickle spear | sweet pickle | bread and butter pickle | pickle chip | sour cucumber | salted cucumber | salt cucumber | fermented cucumber | brined cucumber | ridge cucumber pickle
gherkin			cornichon | baby gherkin
pickled onion			pickled red onion | cocktail onion
pickled ginger		uncounted	gari | sushi ginger	none
pickled beet			pickled beetroot
sauerkraut		uncounted	kraut | soured cabbage | sour cabbage	none
kimchi		uncounted	kimchee	none
pickled vegetable		uncounted
pickled radish		uncounted	takuan | danmuji
preserved mustard green		uncounted	zha cai | ya cai | preserved vegetable | pickled mustard green
umeboshi			pickled plum
pickled chili			pickled chilli | pickled pepper | pickled cherry pepper | cherry pepper | pickled banana pepper
pickled cabbage		uncounted
sun dried olive	sun-dried olive

# --- breads, pastry, snacks ---
@forms noun
@marks cooked
bread		uncounted generic aside	sandwich bread | stale bread | day old bread | sliced bread | batch loaf | batch bread | bloomer | wheaten bread | toast bread | toasting bread | household bread | hops bread
white bread		uncounted
whole wheat bread		uncounted	brown bread | wholemeal bread | whole grain bread | multigrain bread
crusty bread		uncounted aside	country bread | rustic bread | artisan bread | french bread | italian bread | french loaf | peasant bread
sourdough		uncounted	sourdough bread | sourdough loaf | sour dough
rye bread		uncounted	dark rye bread | pumpernickel | pumpernickel bread | dark rye
baguette			french stick | french baguette
ciabatta			ciabatta roll | ciabatta bread
brioche			brioche bun | brioche roll
challah			challah bread
focaccia bread	focaccia		focaccia
garlic bread		uncounted aside
cornbread		uncounted aside	corn bread
bagel
english muffin			muffin | toasting muffin
crumpet
croissant
pretzel
bun		generic	bread bun | sandwich bun
burger bun			potato bun | potato roll | brioche burger bun | hamburger bun | hamburger roll | slider bun
hot dog bun			hot dog roll
bread roll			submarine roll | dinner roll | crusty roll | bap | hoagie roll | sub roll | kaiser roll | barm cake | sandwich roll | soft roll | hard roll | bolillo | slider roll | hawaiian roll | sweet roll | pav
flatbread		aside	flat bread | lavash | laffa
naan		aside	naan bread | garlic naan | nan bread
pita			pita bread | pitta | pitta bread | pita pocket | lebanese bread | arabic bread | syrian bread
roti		aside	chapati | chapatti | paratha
injera		uncounted
bao bun			steamed bun | bao
bread cube
raisin bread		uncounted
texas toast		uncounted
tortilla			tortilla wrap
wraps	tortilla	plural		none
flour tortilla			large flour tortilla | wheat tortilla
corn tortilla
taco shell			hard taco shell | hard shell taco
tostada shell			tostada
tortilla chip			corn tortilla chip | corn chip | nacho chip
breadcrumb		uncounted	bread crumb | dry breadcrumb | dried breadcrumb | dry bread crumb | soft breadcrumb | white breadcrumb | soft bread crumb | fine breadcrumb | seasoned breadcrumb | italian breadcrumb | seasoned bread crumb | italian bread crumb | fresh bread crumb | fresh breadcrumb | italian seasoned breadcrumb | fine dry breadcrumb | golden breadcrumb
panko		uncounted	panko breadcrumb | panko crumb | japanese breadcrumb | panko bread crumb
crouton			seasoned crouton
matzo			matzoh | matzo cracker | matzah
matzo meal		uncounted	matzah meal | matzoh meal	none
melba toast			rusk
breadstick			grissini
cracker			butter flavored cracker | saltine | saltine cracker | butter cracker | round butter cracker | cream cracker | water biscuit | oyster cracker | rich round cracker | crispbread | cracker crumb
graham cracker			honey graham cracker | digestive biscuit | digestive | graham cracker crumb | graham wafer | graham crumb | digestive biscuit crumb | graham cracker square
rice cracker			prawn cracker
oatcake
papadum		aside	poppadom | papad | pappadam | papadam
potato chip			potato crisp
crisps	potato chip	plural		none
french fry		aside	oven chip | frozen french fry | chip | steak fry
fries	french fry	aside plural		none
mashed potato		uncounted	instant mashed potato flake | potato flake | instant potato | instant mashed potato
roast potato		aside
baked potato
pork scratching		uncounted
biscuit		generic	canned biscuit | refrigerated biscuit | tea biscuit
ladyfinger			savoiardi | lady finger | sponge finger | boudoir biscuit | savoiardi biscuit
amaretti			amaretti biscuit | macaroon biscuit
ginger biscuit	gingersnap		gingersnap | ginger snap | ginger nut | gingernut | gingersnap cookie
shortbread biscuit	shortbread		shortbread cookie
vanilla wafer			wafer cookie | vanilla wafer cookie
chocolate sandwich cookie			sandwich cookie | chocolate wafer | chocolate biscuit | cookie crumb | chocolate cookie | chocolate cookie crumb | chocolate wafer cookie
speculoos biscuit	speculoos		speculoos
sponge cake			angel food cake | pound cake | sponge layer | cake crumb
doughnut			donut
panettone
meringue nest	meringue		meringue shell
waffle
ice cream cone
wafer
graham cracker crust			crumb crust | graham cracker pie crust
chocolate crumb crust
blini
crepe			crespelle
polenta tube	polenta
yorkshire pudding		aside

# --- raw dough and frozen potatoes: not ready to eat ---
@forms noun
@marks
tater tot			potato tot | potato puff | frozen potato puff
hash brown			frozen hash brown | hash brown potato | shredded hash brown | frozen hash brown potato
shortcrust pastry		uncounted	short crust pastry | pie crust dough | pie pastry | pie dough | sweet pastry | ready rolled shortcrust pastry | shortcrust | sweet shortcrust pastry | pate sucree | pate brisee	none
pie crust			pie shell | pastry shell | unbaked pie crust | unbaked pie shell | pastry case | tart shell | deep dish pie crust | baked pie shell | pie case | baked pie crust | refrigerated pie crust
puff pastry		uncounted	ready rolled puff pastry | all butter puff pastry | puff pastry sheet | frozen puff pastry | butter puff pastry | flaky pastry | rough puff pastry
phyllo		uncounted	filo | filo pastry | phyllo dough | phyllo pastry | filo dough | filo sheet | phyllo sheet | brick pastry | yufka pastry
kataifi		uncounted		none
choux pastry		uncounted		none
pizza dough		uncounted	pizza base | pizza crust | bread dough | frozen bread dough | refrigerated pizza dough | prebaked pizza crust
crescent roll dough		uncounted	crescent roll | refrigerated crescent roll | crescent dough | refrigerated crescent dinner roll
cookie dough		uncounted	refrigerated cookie dough | sugar cookie dough
vol au vent case
samosa pad	samosa pastry		samosa pastry
lumpia
empanada disc	empanada dough		empanada wrapper | empanada dough

# --- drinks ---
@forms none
@marks uncounted
white wine			dry white wine | cooking wine | white cooking wine | chardonnay | sauvignon blanc | pinot grigio
red wine			dry red wine | burgundy | cabernet | merlot | pinot noir | full bodied red wine
wine		generic
rose wine
sparkling wine			prosecco | champagne | cava
port			ruby port | port wine | tawny port
sherry			dry sherry | cooking sherry | cream sherry | fino sherry
marsala			marsala wine | dry marsala
madeira			madeira wine
vermouth			dry vermouth | sweet vermouth | noilly prat | white vermouth
sake			cooking sake | japanese rice wine
mirin			sweet rice wine
rice wine			shaoxing wine | shaohsing wine | shaoxing | chinese rice wine | chinese cooking wine | shao hsing rice wine | shaoxing rice wine | rice cooking wine
beer			lager | ale | pale ale | wheat beer | light beer | pilsner | flat beer | brown ale | blonde ale
stout			dark beer | porter
cider			hard cider | dry cider
brandy			cognac | calvados | armagnac
whiskey			whisky | scotch | rye whiskey | irish whiskey
bourbon			bourbon whiskey
rum			dark rum | white rum | light rum | spiced rum | coconut rum | gold rum
vodka			lemon vodka | vanilla vodka
gin
tequila			blanco tequila
mezcal
kirsch
amaretto
orange liqueur			triple sec | curacao | blue curacao | orange brandy
coffee liqueur
irish cream			irish cream liqueur
ouzo			pastis | arak | sambuca | absinthe
limoncello
raspberry liqueur
banana liqueur
liqueur		generic	liquor | butterscotch schnapps | raspberry schnapps | schnapps | peach schnapps | peppermint schnapps | creme de menthe | creme de cacao | hazelnut liqueur | melon liqueur | chocolate liqueur
bitters			orange bitters
cachaca
coffee			brewed coffee | black coffee | strong coffee | cold brew
espresso			espresso shot | shot of espresso
espresso powder			instant espresso | instant espresso powder | espresso coffee powder
instant coffee			instant coffee powder | instant coffee granules | coffee powder | coffee granules
coffee bean				noun
tea			black tea | brewed tea | earl grey | green tea | iced tea | chai
tea bag			teabag	noun
matcha			matcha powder | green tea powder
cola			diet cola
ginger ale			ginger beer
lemon lime soda	lemon-lime soda		lemon soda | lemon lime soft drink
tonic water
root beer
sour mix			sweet and sour mix | margarita mix
bloody mary mix
fruit punch			drink mix
protein powder			vanilla protein powder | chocolate protein powder | whey protein | whey powder
ginger syrup
vanilla syrup

# --- more from the pantries of many kitchens ---
@forms none
@marks uncounted spice savory
korarima			grains of paradise | alligator pepper
mitmita
suya spice			yaji | suya pepper
uda seed			negro pepper | uda	noun
calabash nutmeg			ehuru
long pepper			pippali
blue fenugreek			utskho suneli
khmeli suneli
pav bhaji masala			kitchen king masala | meat masala | chicken masala | fish masala | egg masala | chole masala | chana masala powder | sabzi masala | rasam masala | sambar masala
dried pomegranate seed			pomegranate powder
mulato chili			cascabel chili | chile cascabel
ground crayfish			crayfish powder | dried crayfish | ground dried shrimp | dried shrimp powder
iru			locust bean | fermented locust bean | dawadawa | soumbala | ogiri
isot	urfa pepper		isot pepper
shiro powder			shiro | mekelesha
@marks uncounted spice
mahleb			mahlab
mastic			mastic gum | mastiha
rosebud	rose petal		dried rosebud	noun
jamaica flower			sorrel flower	noun
chenpi
osmanthus			dried osmanthus
red yeast rice
@marks uncounted savory
dried lily bud			lily bud	noun
dried scallop			conpoy	noun
aonori			green laver | gim | roasted laver
tenkasu			tempura scraps | agedama
konnyaku			shirataki | shirataki noodles
yuzu kosho
nam prik pao			thai chili jam | thai chilli jam | roasted chili paste
massaman paste			panang paste | penang curry paste | satay paste
toasted rice powder			roasted rice powder | toasted ground rice | khao khua
fermented bean curd			fermented tofu | red bean curd | white bean curd
tianmianjiang			sweet bean sauce | sweet flour sauce
suan cai			chinese pickled vegetable	noun
bagoong			bagoong alamang | fermented shrimp paste | padaek
kerisik			toasted coconut paste
gula melaka			malaysian palm sugar
torch ginger			bunga kantan
seasoning sauce			golden mountain sauce
pancit canton			pancit | pancit bihon | bihon
banana sauce			banana ketchup
achar			mixed pickle | acar
aji panca			aji panca paste | rocoto paste | aji amarillo pepper | huacatay | huacatay paste
recado rojo			recado
huitlacoche
browning sauce			gravy browning
adjika			ajika
tkemali
zacusca			lutenitsa | lyutenitsa | pindjur
lecso
amba			mango amba
@marks uncounted dairy cooked savory
sulguni			suluguni | georgian cheese
reblochon			vacherin | saint nectaire | tomme | port salut
stracchino			squacquerone | crescenza | robiola
fromage blanc
smetana			russian sour cream
kashk			whey paste
kaymak
requeijao			catupiry
queso coalho			coalho cheese | grilling cheese | bread cheese
cheese spread			cheese triangle
@marks uncounted fat savory
niter kibbeh			spiced clarified butter | ethiopian spiced butter
dende oil	palm oil		dende | azeite de dende
# Starches and meals.
@marks uncounted flour
sour cassava starch			sour manioc starch | polvilho azedo | polvilho | sour tapioca starch | sweet manioc starch | manioc starch
manioc flour	cassava flour		farinha
maize meal			mealie meal | mielie meal | ugali flour | pap | white maize meal | samp | mamaliga
pounded yam flour			yam flour | elubo | poundo | fufu flour
finger millet flour			ragi flour | ragi
mung bean flour			moong flour | urad flour
kinako			roasted soybean flour
buckwheat groat				noun
tarhana			trahana
@marks uncounted
lye water			kansui | alkaline water | slaked lime | pickling lime
psyllium husk			psyllium | psyllium husk powder
konjac powder			glucomannan
farofa
maesil syrup			plum syrup | maesil
grape molasses			pekmez | carob molasses | carob syrup
carob powder
inverted sugar syrup
@marks uncounted sweet
halva			halvah | halwa
ube			ube halaya | ube jam | purple yam jam
nata de coco			macapuno | coconut jelly | coconut sport
poppy seed filling
plum butter			povidl | powidl
acai pulp			frozen acai
edible glitter			luster dust | lustre dust | edible gold leaf
elderflower			elderflower head	noun
freeze dried strawberry			freeze dried raspberry | freeze dried fruit	noun
speculoos cookie			caramelised biscuit | caramelized biscuit
# Vegetables, leaves and roots.
@forms noun
@marks produce savory
jute leaf			molokhia | mulukhiyah | ewedu | saluyot
moringa leaf			moringa | malunggay
cassava leaf
pumpkin leaf			ugu
hoja santa
betel leaf			wild betel leaf
nasturtium			nasturtium leaf | nasturtium flower
vietnamese mint			vietnamese coriander | laksa leaf | rau ram | rice paddy herb
sawtooth herb	culantro		sawtooth coriander | shado beni | chadon beni
horseradish leaf
ash gourd			wax gourd
yardlong bean			chinese long bean | sitaw | snake bean
cactus			cactus leaf
mixed leaf			baby leaf | leafy green
lotus seed
hungarian pepper			sweet pointed pepper | cubanelle | cubanelle pepper | long green pepper | bull's horn pepper
choclo	corn		giant corn | peruvian corn | purple corn
petai			stink bean | bitter bean
bambara bean			bambara nut
# Fish, meat and eggs.
@marks uncounted fish savory
flathead			gurnard | ling | dogfish | huss | milkfish | bangus
stockfish			dried fish
bacalhau	salt cod		baccala
@marks uncounted cooked savory
taramasalata			tarama
squid ink			cuttlefish ink
chicharron			pork crackling
tinned pork	luncheon meat		canned luncheon meat
@marks cooked savory
salted egg			salted duck egg | century egg | preserved egg | tea egg
fish ball			beef ball | pork ball
csabai			kolbasz | gyulai
@marks meat savory
ox tongue			beef tongue | ox heart | lamb heart
cow foot			cow skin | ponmo | shaki
carne seca			salted beef | dried beef
longganisa			longanisa | boerewurst | longaniza
# Breads and wrappers.
@marks uncounted cooked
kadaif			shredded pastry | angel hair pastry
yufka
banh pho	rice noodles		pho noodle | pho noodles
korean glass noodles	glass noodle
kritharaki	orzo
krupuk			shrimp chip | emping | shrimp cracker

# More leaves, pastes and jars of many kitchens.
@marks produce savory
perilla leaf			sesame leaf	noun
ugu leaf			fluted pumpkin leaf	noun
bitter leaf			onugbu	noun
uziza leaf				noun
scent leaf			nchanwu | clove basil	noun
water leaf			waterleaf	noun
taro leaf			dasheen leaf | gabi leaf	noun
sweet potato leaf				noun
malunggay leaf				noun
chili leaf			pepper leaf	noun
avocado leaf				noun
efo tete			efo | african spinach
minari			water parsley | korean parsley
shombo			cayenne chili
siling labuyo
malagueta pepper			malagueta
biquinho pepper
sea buckthorn			sea buckthorn berry
@marks produce
rosehip			rose hip
barberry			dried barberry | zereshk
kokum
goraka
cupuacu
sampaloc
@marks spice savory
rampe			pandanus leaf
stone flower			dagad phool
pickling spice			mixed pickling spice | pickling spices
dill head			flowering dill | head of dill
ogbono			ground ogbono
@marks uncounted spice savory
roasted curry powder			ceylon curry powder | dark curry powder
file powder			gumbo file | ground sassafras
sinigang mix			tamarind soup mix | sinigang powder
@marks uncounted savory
anchovy stock			anchovy broth | dried anchovy stock
pickled turnip			turnip pickle | pink turnip pickle
coconut sambol			pol sambol | sambol
shatta			shatta sauce
kaong			sugar palm fruit
@marks shellfish savory
salted shrimp			saeujeot | fermented shrimp
@marks fish savory
maldive fish			maldive fish flake | umbalakada
@marks meat savory
tocino
reindeer			reindeer meat
elk			elk meat
gigot chop			lamb gigot chop
chicharon
@marks uncounted fat
perilla oil			deulgireum
@marks uncounted
perilla seed			perilla seed powder
coconut milk powder			powdered coconut milk
scraped coconut			freshly scraped coconut
kithul treacle			palm treacle | coconut treacle
latik
saltpetre			saltpeter
carrageen			carrageen moss | irish moss
@marks uncounted savory
idli rice			parboiled idli rice
ofada rice
honey bean			nigerian brown bean | oloyin bean | brown bean	noun
canton noodle			canton	noun
@marks uncounted dairy cooked savory
nabulsi cheese			nabulsi
akkawi cheese			akkawi | akawi
brown cheese			brunost | norwegian brown cheese
filmjolk			cultured milk

# --- more plants, fish, meats and doughs of the world ---
@forms noun
@marks produce savory
green banana			matoke
puntarelle		uncounted
fiddlehead			fiddlehead fern | ostrich fern
chickweed		uncounted
chinese celery		uncounted
krachai			fingerroot | finger root | wild ginger
mitsuba		uncounted
shungiku		uncounted	chrysanthemum greens | tong ho
amaranth leaf			amaranth greens
@marks produce
tamarillo			tree tomato
feijoa			pineapple guava
kiwano			horned melon
sapodilla			chikoo | chiku
custard apple			cherimoya
rowan berry
loganberry
tayberry
@marks uncounted spice
jaffna curry powder	curry powder	uncounted spice savory
coriander-cumin powder		uncounted spice savory	dhania jeera | dhana jeeru | dhana jiru
black cumin seed			kala jeera | shahi jeera
lemon myrtle
wattleseed
silver leaf			vark | varak
@forms none
@marks uncounted savory
whole-egg mayonnaise	mayonnaise	uncounted savory	whole egg mayo
chipotle sauce
sofrito base	sofrito		recaito
kajmak		uncounted dairy cooked savory
tasty cheese	cheddar	uncounted dairy cooked savory
khoya		uncounted dairy	khoa | mawa | mava
chenna		uncounted dairy	chhena
amasi		uncounted dairy	maas
lardo		uncounted cooked savory
tasso		uncounted cooked savory	tasso ham
bottarga		uncounted cooked savory	mullet roe
vincotto		uncounted
tamarind juice			tamarind liquid
gherkin juice			gherkin brine | gherkin vinegar | pickle water
fruit chutney			peach chutney | blatjang
coriander and mint chutney			mint and coriander chutney | coriander mint chutney
unagi		uncounted fish cooked savory	grilled eel
chuno		uncounted produce	freeze dried potato
pisco		uncounted
yerba mate		uncounted
rooibos		uncounted	rooibos tea | red bush tea | redbush tea
guarana		uncounted
@forms noun
@marks shellfish savory
yabby			yabbie
bug tail			bug meat | slipper lobster
geoduck
@marks fish savory
lutefisk		uncounted fish
dried squid			dried cuttlefish
@marks meat savory
kangaroo fillet			kangaroo | kangaroo steak | kangaroo loin
country-style pork rib	pork rib		country rib
packer brisket			whole packer brisket | whole packer | beef packer
duck gizzard		poultry
@marks cooked savory
shelf-stable gnocchi		uncounted cooked savory	fresh gnocchi
droewors		uncounted cooked savory


# --- more names from home kitchens of many places ---
@forms noun
@marks produce savory
celtuce
sea kale
black radish	radish		winter radish
beef tomato	tomato
bitterleaf		uncounted herb
radish leaf		uncounted	radish green | radish top	noun:radish leaves
drumstick leaf	moringa leaf	uncounted	murunga leaf | murunga	noun:drumstick leaves
gotukola		uncounted herb	gotu kola | pennywort
mukunuwenna		uncounted herb
kankun	water spinach	uncounted
mustard cress	cress	uncounted	salad cress
callaloo bush	callaloo	uncounted	dasheen bush
parasol mushroom	mushroom
myoga		herb
lotus leaf			dried lotus leaf	noun:lotus leaves
blackcurrant leaf			currant leaf | cherry leaf	noun:blackcurrant leaves
bilberry	blueberry		wild blueberry | whortleberry	noun:bilberries
@forms none
@marks uncounted spice savory
goda masala
amchar masala
sansho			sansho pepper
pimento berry	allspice			noun:pimento berries
quatre epices
vegetable seasoning			umami seasoning
@marks uncounted spice sweet
lebkuchen spice	gingerbread spice		speculoos spice
mixed essence	vanilla extract
@marks uncounted savory
green seasoning		herb	caribbean green seasoning
raw curry powder	curry powder	spice	unroasted curry powder
split pea powder	split pea	flour	ground split pea | ground split peas
vinegar essence	vinegar
string hopper flour	rice flour	flour	roasted rice flour
kurakkan flour	millet flour	flour
kama flour		flour cooked	kama
medium oatmeal	oatmeal		fine oatmeal | coarse oatmeal
samba rice	rice		keeri samba | koshihikari | egyptian rice | country rice
katakuriko	potato starch
shiratamako	glutinous rice flour	flour
pounded yam
eba	gari		semovita
@marks uncounted cooked savory
zakwas			zur starter | rye sour | zurek starter | sour rye starter
pickled walnut				noun
beni shoga	pickled ginger		red pickled ginger
black chickpea			kala chana | brown chickpea | desi chickpea | kala channa	noun
idli batter			dosa batter | idli dosa batter
sev		aside	nylon sev | bhujia
boondi		aside
aburaage			fried tofu pocket | inari pocket
jelly stock pot	stock cube			noun
@marks uncounted dairy cooked
lassi		aside	sweet lassi | salted lassi
@marks uncounted
cashew paste
soju
@marks cooked savory meat
char siu			char siu pork | chinese barbecue pork | chinese bbq pork	none
@marks uncounted sweet
nib sugar	pearl sugar
birch syrup	syrup		beet syrup | sugar beet syrup
date molasses	date syrup		silan
jelly cube	jelly			noun
hartshorn	baker's ammonia	leavening	hartshorn salt
@marks uncounted dairy cooked savory
tilsit			tilsiter
butterkase
appenzeller
kasseri
manouri			anthotyro
oscypek			smoked sheep's cheese
shanklish
idiazabal			mahon
cheshire cheese	lancashire cheese		cheshire
raclette cheese			cheese for raclette
@marks uncounted dairy
ayran			doogh
@forms noun
@marks meat savory
pig tail			pigtail | pig's tail | salted pig tail | smoked pig tail
sujuk		uncounted cooked	sucuk | soujouk | sudzuk
basturma		uncounted cooked	pastirma
bockwurst	frankfurter	cooked	krakauer | debreziner
weisswurst	bratwurst
mettwurst		uncounted cooked	teewurst
leberwurst	liver sausage	uncounted cooked
kassler		cooked	kasseler | smoked pork loin | smoked pork
polony		uncounted cooked	bologna sausage
hog's pudding	black pudding
boiling fowl	chicken	poultry	boiling hen | stewing chicken | soup chicken | soup hen
venison mince	ground venison	uncounted ground	minced venison
@marks fish savory
zander			pikeperch | pike perch
hoki	white fish	uncounted
tarakihi	snapper	uncounted	terakihi
smoked herring	kipper	uncounted cooked	red herring
flying fish
undyed smoked haddock	smoked haddock	uncounted
dried sprat	dried anchovy	uncounted	halmasso | niboshi
king fish	kingfish	uncounted
@marks shellfish savory
brown shrimp	shrimp
potted shrimp	shrimp	cooked
paua	abalone		kina
dressed crab	crab meat	cooked
@marks uncounted cooked savory
laverbread
dulse flake	dulse
@marks cooked
brotchen	bread roll		semmel
laugenbrot	pretzel
barm	bread roll		stottie | bridge roll
potato farl			tattie scone
zwieback	rusk
pol roti		names
knackebrot	crispbread	uncounted
rich tea biscuit	digestive biscuit		malted milk biscuit
pretzel stick	pretzel
pappadum	poppadom
@marks
suet pastry		uncounted	suet crust
rough puff	puff pastry	uncounted
ready rolled pastry	pastry	uncounted
potato dumpling			kluski | knodel | bread dumpling	noun
@forms none
@marks uncounted
kvass
mead


# --- names of more kitchens ---
@forms noun
@marks produce savory
agretti		uncounted	monk's beard
jilo			scarlet eggplant
maxixe
horta		uncounted	wild greens
gongura		uncounted herb	gongura leaf | sorrel leaf	none
bathua		uncounted	lamb's quarters	none
crown daisy		uncounted herb	garland chrysanthemum
elephant yam	yam		suran
oha leaf		uncounted herb	afang leaf | okazi leaf | utazi leaf	noun:oha leaves
kontomire		uncounted	cocoyam leaf
waakye leaf			sorghum leaf	noun:waakye leaves
turmeric leaf				noun:turmeric leaves
preserved radish		uncounted cooked	salted radish
mustard stem	preserved mustard green	uncounted cooked	mei cai
olluco			ulluco
gundruk		uncounted cooked
morogo		uncounted	wild spinach
pickled mushroom		cooked
pickled cabbage leaf		cooked	sour cabbage leaf | sarma leaf	noun:pickled cabbage leaves
@forms none
@marks uncounted spice savory
timur pepper	sichuan peppercorn		timut pepper | timur
jimbu
radhuni			ajmod
golpar
chubritsa			sharena sol
taklia
cameroon pepper			ground cameroon pepper
jerk seasoning paste	jerk paste
chicken spice			braai spice | aromat seasoning | barbecue spice
dried coriander
@marks uncounted spice
marigold petal			dried marigold | marigold | imeretian saffron	noun
@marks uncounted savory
kudampuli	goraka		gambooge | asam keping | asam gelugor | kudam puli | kodampuli | malabar tamarind | smoked tamarind
cassareep
soup soy sauce	soy sauce		guk ganjang
plum extract			green plum syrup
kasundi	mustard		bengali mustard
mojo			mojo sauce
monkey gland sauce
mostarda			mostarda di frutta
shito			black pepper sauce
mango achar	mango pickle		kuchela | atchar
massa de pimentao	red pepper paste		salca
gulyas cream			paprika cream
chestnut puree		sweet	sweetened chestnut puree
edible gum			gond
makhana			fox nut | puffed lotus seed | fox nuts
charoli			chironji
tarhonya			csipetke | pinched noodles
fideos	vermicelli		fideo noodles
ptitim	israeli couscous
gobindobhog rice	rice		ponni rice | matta rice | sona masoori | sona masoori rice
rye flake			barley flake | spelt flake	noun
moth bean			val bean	noun
sugar bean	cranberry bean		sugar beans	noun
poppy seed paste		cooked	ground poppy seed
pork floss		cooked	meat floss | rousong
fish cake sheet	fish cake	cooked	eomuk | odeng
kimchi juice		cooked	kimchi brine | kimchi liquid
torshi		cooked	turshiya
bottled grape leaf	grape leaf	cooked		noun:bottled grape leaves
taggiasca olive	olive	cooked	nocellara olive	noun
@marks uncounted sweet
stroop	syrup		dutch syrup
hagelslag	chocolate sprinkles
malt loaf				noun
peperkoek			ontbijtkoek
maltose			maltose syrup
burnt sugar			caramel colouring
@marks uncounted dairy cooked savory
requeijao cheese	cream cheese
kashar			kasar cheese | kasar
queso quesadilla			quesadilla cheese
gjetost	brunost		geitost | messmor
crowdie
tetilla
domiati			roumi cheese | baladi cheese
kesong puti			carabao cheese
@marks uncounted dairy
smantana	sour cream		filbunke | viili
malai	cream
@forms noun
@marks fish savory
hilsa			ilish
rohu			bhetki | rui fish
dried bangus	dried fish	uncounted cooked	daing | tinapa | shutki
mojama		uncounted cooked	cured tuna
rakfisk		uncounted cooked
@marks shellfish savory
gooseneck barnacle			percebes
dried oyster		cooked
@marks meat savory
botifarra	pork sausage		butifarra | alheira
paio	smoked sausage	cooked	chourico | paio sausage
saucisson	salami	uncounted cooked	saucisson sec
andouillette
salo	lardo	uncounted cooked
crubeen	pig's foot
confit duck leg	duck confit	cooked	duck leg confit
toucinho	pork fat	uncounted
moose	venison	uncounted
@marks cooked
hard dough bread	bread	uncounted	hardo bread
pandesal	bread roll		butterie | rowie
broa	cornbread	uncounted	corn broa
dhalpuri		names	sada roti | roti skin
soda cracker	cracker		cream wafer
bammy			cassava flatbread
appalam	poppadom
pandoro	panettone	uncounted
@marks savory
corn husk			dried corn husk
roll pastry sheet	spring roll wrapper
@forms noun
@marks produce
pointed gourd			parwal | potol
bitter orange			sour orange
jujube		uncounted	red date | dried red date | chinese date

# --- verbs that are first of all the names of foods ---
@tag ACTION
@forms verb
@marks seasons
butter
oil
salt
flour
sugar
pepper
lard
egg wash	brush			verb-last
water
@marks puts finishes
ice
@marks
bread		prep
cream		mixes prep	cream together | cream up

# --- second readings: names of foods that are also names of dishes and of their parts ---
@tag SIZE
@forms none
@marks
fat	large

@tag PART
@forms noun
@marks
curry sauce	sauce
bread dough	dough		pizza dough | cookie dough | pie dough
spice mixture	mixture
crumb crust	crust
cornstarch slurry	slurry
dry rub	rub		spice rub
gravy
pastry case	pastry		sweet pastry
custard
syrup
vinaigrette
salsa
relish
mashed potatoes	mash
curry paste	paste
broth
stock
fat			dripping | drippings
pickle
compote
caramel
praline
sponge layer	sponge
jelly
egg wash
spice mix			spice blend | seasoning mix
tart shell	shell
stuffing mix	stuffing
crema
aioli
pesto
pasta sauce	sauce
sofrito			soffritto

@tag DISH
@forms noun
@marks
chili			chilli
garlic bread		names	cheesy garlic bread
roast potatoes		names	roasted potatoes | roasties
tzatziki		names
hash browns		names	hash brown
lemon curd		names	lime curd | orange curd
apple butter		names	pumpkin butter | pear butter
pickled onions		names	pickled red onions
saag		names
champ		names
coddle		names	dublin coddle
massaman		names
meringues		names
potato skins		names	loaded potato skins
pigs in blankets		names	pig in a blanket
tomato soup	soup
dal
lo mein
bao
fish cake	fishcake
adobo
hamburger	burger
hot dog
alfredo	pasta
scrambled eggs	scramble
crepe
waffle
porridge
starter	breakfast	generic
muffin
pound cake	cake		sponge cake | angel food cake
shortbread cookies	cookie
truffles
fudge
ice cream			sorbet | gelato | frozen yogurt
doughnut			donut
bread			sourdough bread
sourdough
focaccia
baguette
ciabatta
dinner roll	roll		bread roll | brioche
bagel
pretzel
flatbread			pita | pitta | paratha | tortilla | injera
biscuit
cornbread			corn bread
english muffin
crumpet
croissant
breadstick
queso dip	dip
salsa
chutney
jam			strawberry jam | marmalade
pickles
kimchi
sauerkraut
pesto
labneh
tapenade
ajvar
challah
gnocchi
ravioli
lemonade
eggnog	cocktail
chai
iced tea
mashed potato
baked beans
refried beans
roast chicken
roast beef
pulled pork
pate	terrine
jerky
granola
polenta
gravy
yorkshire pudding
@marks names
hummus
guacamole
romesco sauce			romesco
roti			chapati | chapatti
naan
stracciatella
taramasalata
oatcake
piccalilli
pierogi
spaetzle
spatzle
rouladen
raclette
gravlax
crispbread
lecso
pelmeni
blini
cannelloni
manicotti
scampi
crespelle
collards
collard green
pico de gallo
callaloo
farofa
chimichurri
egusi
molokhia
mulukhiyah
baba ganoush
poha
rajma
bao bun
steamed bun
tteokbokki
galbi
pancit
pancit bihon
pancit canton
lumpia
ube halaya

# --- "like a quarter cup": an amount that is not exact ---
@tag ARTICLE
@forms none
@marks
like a	a		like an
