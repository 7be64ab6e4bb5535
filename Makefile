# dishtake: `make demo` shows the main job, `make test` runs every test, `make help` lists the rest.
# Both install what they need on Debian and its kin. V=1 shows the commands, B=DIR builds elsewhere.
# SPDX-License-Identifier: MIT
VERSION = 0.1.0
SONAME = libdishtake.so.0
B ?= build
CFLAGS ?= -O2 -g
PREFIX ?= /usr/local
Q = $(if $(V),,@)
say = $(if $(V),,@echo "  $(1) $@" &&)

# Debian packages: to build, and to run the tests. `make packages` installs those that are missing.
PACKAGES = gcc libc6-dev make pkg-config libpcre2-dev libjansson-dev libutf8proc-dev libexpat1-dev \
           libmicrohttpd-dev
TEST_PACKAGES = strace valgrind parallel libcmocka-dev python3 python3-jsonschema python3-isodate ffmpeg mkvtoolnix poppler-utils \
                chromium nodejs npm g++ libicu-dev units
CHECK_PACKAGES = clang clang-format clang-tidy cppcheck
LIBRARIES = libpcre2-8 jansson libutf8proc expat
# The program alone serves the review page; the library does not. It is loaded when it does (review/http.h).
PROGRAM_LIBRARIES = libmicrohttpd

WARN = -Wall -Wextra -Werror -Wpedantic -Wshadow -Wconversion -Wstrict-prototypes -Wmissing-prototypes \
       -Wvla -Wformat=2 -Wcast-qual -Wundef
# Asked for when a recipe runs, since `make test` may have installed the libraries just before.
LIBRARY_FLAGS = $(shell pkg-config --cflags $(LIBRARIES) $(PROGRAM_LIBRARIES))
override CPPFLAGS += -Isrc -Iinclude -D_POSIX_C_SOURCE=200809L -DPCRE2_CODE_UNIT_WIDTH=8 \
       -DDISHTAKE_VERSION=$(VERSION)
# The prefix map keeps the folder that it is built in out of the bytes.
STD = -std=c11 -ffile-prefix-map=$(CURDIR)=. -fPIC -fvisibility=hidden $(WARN) -MMD -MP
LDLIBS = $(shell pkg-config --libs $(LIBRARIES)) -lm -lpthread
PROGRAM_LDLIBS = -ldl
COMPILE = $(CC) $(CPPFLAGS) $(LIBRARY_FLAGS) $(CFLAGS) $(STD)
PARALLEL = $(if $(findstring jobserver,$(MAKEFLAGS)),,-j$(shell nproc))

# The core is pure: bytes in, recipes out. The program's own folders may touch the machine.
CORE_DIRS = base model pack kitchen read words tag match split build check edits write
TOOLS = src/pack/embed.c src/pack/precompile.c src/precompile.c
CORE = $(filter-out $(TOOLS),$(wildcard $(CORE_DIRS:%=src/%/*.c) src/*.c))
CLI = $(filter-out src/cli/manual.c,$(wildcard src/disk/*.c src/review/*.c src/cli/*.c))
GRAMMARS = $(shell find grammars -type f | LC_ALL=C sort)
ASSETS = $(sort $(wildcard src/review/assets/*))
PAGES = $(sort $(wildcard src/write/pages/*))
# What is only data is compiled once, for the sanitizers' builds too.
CORE_O = $(CORE:src/%.c=$(1)/%.o) $(B)/pack_builtin.o $(B)/ready_builtin.o $(B)/page_files.o

MANUAL = $(B)/manual/dishtake.1 $(B)/manual/dishtake.bash $(B)/manual/_dishtake $(B)/manual/dishtake.fish

all: $(B)/dishtake $(B)/libdishtake.so $(B)/dishtake.pc $(MANUAL) ## the program and both libraries

$(B)/%.o: src/%.c
	@mkdir -p $(@D)
	$(call say,CC) $(COMPILE) -c -o $@ $<

# Here nearly all time goes: -O3 takes 4 % off a run for 37 KB. Only where nobody says how to compile.
HOT = base pack words tag match split
ifeq ($(origin CFLAGS),file)
$(foreach dir,$(HOT),$(eval $(B)/$(dir)/%.o: CFLAGS += -O3))
endif

$(B)/embed: src/pack/embed.c
	@mkdir -p $(@D)
	$(call say,CC) $(COMPILE) -o $@ $<

# Reads the grammar with the program's own loader, so that the program need not.
$(B)/precompile: src/pack/precompile.c $(patsubst src/%.c,$(B)/%.o,$(filter src/base/% src/pack/%,$(CORE)))
	@mkdir -p $(@D)
	$(call say,CC) $(COMPILE) $(LDFLAGS) -o $@ $(filter %.c %.o,$^) $(LDLIBS)

$(B)/pack_builtin.c: $(B)/precompile $(GRAMMARS)
	$(call say,GRAMMAR) $(B)/precompile $(GRAMMARS) >$@.new && mv $@.new $@

$(B)/pack_builtin.o: $(B)/pack_builtin.c
	$(call say,CC) $(COMPILE) -c -o $@ $<

# Makes of that grammar what each start would make, so that the program need not.
READY = $(filter src/base/% src/model/% src/pack/% src/kitchen/% src/words/% src/tag/% src/check/saying.c,$(CORE))
$(B)/precompile-ready: src/precompile.c $(READY:src/%.c=$(B)/%.o) $(B)/pack_builtin.o
	@mkdir -p $(@D)
	$(call say,CC) $(COMPILE) $(LDFLAGS) -o $@ $(filter %.c %.o,$^) $(LDLIBS)

$(B)/ready_builtin.c: $(B)/precompile-ready
	$(call say,GRAMMAR) $(B)/precompile-ready >$@.new && mv $@.new $@

$(B)/ready_builtin.o: $(B)/ready_builtin.c
	$(call say,CC) $(COMPILE) -c -o $@ $<

# The page's files.
$(B)/asset_files.c: $(B)/embed $(ASSETS)
	$(call say,EMBED) $(B)/embed asset_files review/assets.h $(ASSETS) >$@.new && mv $@.new $@

$(B)/asset_files.o: $(B)/asset_files.c
	$(call say,CC) $(COMPILE) -c -o $@ $<

# The style sheets of what is published, too.
$(B)/page_files.c: $(B)/embed $(PAGES)
	$(call say,EMBED) $(B)/embed page_files write/pages.h $(PAGES) >$@.new && mv $@.new $@

$(B)/page_files.o: $(B)/page_files.c
	$(call say,CC) $(COMPILE) -c -o $@ $<

$(B)/libdishtake.a: $(call CORE_O,$(B))
	$(call say,AR) rm -f $@ && ar qcs $@ $^

$(B)/libdishtake.so: $(call CORE_O,$(B))
	$(call say,LD) $(CC) $(CFLAGS) $(LDFLAGS) -shared -Wl,-soname,$(SONAME) -Wl,-z,defs -o $(B)/$(SONAME) $^ $(LDLIBS) \
	  && ln -sf $(SONAME) $@

$(B)/dishtake: $(CLI:src/%.c=$(B)/%.o) $(B)/asset_files.o $(B)/libdishtake.a
	$(call say,LD) $(CC) $(CFLAGS) $(LDFLAGS) -o $@ $^ $(LDLIBS) $(PROGRAM_LDLIBS)

# The man page and the completions, from the program's own tables of commands and options.
$(B)/manual/make: src/cli/manual.c
	@mkdir -p $(@D)
	$(call say,CC) $(COMPILE) -o $@ $<

$(B)/manual/dishtake.1: $(B)/manual/make
	$(Q)$< man >$@
$(B)/manual/dishtake.bash: $(B)/manual/make
	$(Q)$< bash >$@
$(B)/manual/_dishtake: $(B)/manual/make
	$(Q)$< zsh >$@
$(B)/manual/dishtake.fish: $(B)/manual/make
	$(Q)$< fish >$@

# Made anew each time, since PREFIX may be another one.
$(B)/dishtake.pc: FORCE
	@mkdir -p $(@D)
	@printf '%s\n' 'prefix=$(PREFIX)' 'libdir=$${prefix}/lib' 'includedir=$${prefix}/include' '' 'Name: dishtake' \
	  'Description: timed transcripts of cooking to written recipes' 'Version: $(VERSION)' \
	  'Requires.private: $(LIBRARIES)' 'Libs: -L$${libdir} -ldishtake' 'Libs.private: -lm' \
	  'Cflags: -I$${includedir}' >$@

# ---- tests: every tests/*/test_*.c is a cmocka program with the core under ASan and UBSan; every
# tests/*/test_*.py and every executable tests/*/check_* is a program of its own.
S = $(B)/san
SAN = -fsanitize=address,undefined -fno-sanitize-recover=all -O1 -g -DARENA_MALLOC
TEST_C = $(wildcard tests/*/test_*.c)
TEST_BIN = $(TEST_C:%.c=$(S)/%)
TEST_SCRIPTS = $(wildcard tests/*/test_*.py) $(wildcard tests/*/check_*)
# Begun first, the longest at the top, so that no processor waits for one of them at the end.
TEST_LONG = tests/review/test_browser.py tests/limits/check_limits.py tests/packaging/check_package \
            tests/published/check_publish_browser.py $(S)/tests/edits/test_edits
TEST_ALL = $(TEST_LONG) $(filter-out $(TEST_LONG),$(TEST_BIN) $(TEST_SCRIPTS))
# The spec files and the recordings with gold, against floors.
SPEC_RUN = "tests/spec/run_spec --floor tests/spec/floors.tsv $(B)/dishtake"
ACCURACY_RUN = "tests/accuracy/accuracy.sh $(B)/dishtake"

$(S)/%.o: src/%.c
	@mkdir -p $(@D)
	$(call say,CC) $(COMPILE) $(SAN) -c -o $@ $<

$(S)/libcore.a: $(call CORE_O,$(S))
	$(call say,AR) rm -f $@ && ar qcs $@ $^

$(S)/dishtake: $(CLI:src/%.c=$(S)/%.o) $(B)/asset_files.o $(S)/libcore.a
	$(call say,LD) $(CC) $(SAN) $(LDFLAGS) -o $@ $^ $(LDLIBS) $(PROGRAM_LDLIBS)

# A test of files on disk needs src/disk too; an archive gives only what is asked for.
$(S)/libdisk.a: $(patsubst src/%.c,$(S)/%.o,$(wildcard src/disk/*.c))
	$(call say,AR) rm -f $@ && ar qcs $@ $^

$(S)/tests/%: tests/%.c $(S)/libdisk.a $(S)/libcore.a
	@mkdir -p $(@D)
	$(call say,CC) $(COMPILE) $(SAN) -Itests $(LDFLAGS) -o $@ $(filter %.c %.a,$^) $(LDLIBS) $(TEST_LDLIBS) -ljansson -lcmocka

# What the library never needs.
$(S)/tests/published/test_icu_%: TEST_LDLIBS = $(shell pkg-config --libs icu-i18n icu-uc)

# The fuzz targets without the fuzzer, for what is kept in tests/fuzz.
REPLAY_BIN = $(patsubst %.c,$(S)/%,$(wildcard tests/fuzz/fuzz_*.c))

# That one holds how slots are found against PCRE2.
$(S)/tests/fuzz/fuzz_same: LDLIBS += -Wl,--wrap=groups_find

$(S)/tests/fuzz/fuzz_%: tests/fuzz/fuzz_%.c tests/fuzz/replay.c $(S)/libcore.a
	@mkdir -p $(@D)
	$(call say,CC) $(COMPILE) $(SAN) -Itests $(LDFLAGS) -o $@ $(filter %.c %.a,$^) $(LDLIBS) -ljansson

# Memory that fails: with a malloc of its own, that the libraries take too; so without sanitizers.
$(B)/faults: tests/faults/faults.c $(B)/libdishtake.a
	$(call say,CC) $(COMPILE) -fvisibility=default $(LDFLAGS) -o $@ $^ $(LDLIBS)

faults: $(B)/faults $(B)/dishtake ## every single allocation fails in turn, which takes minutes
	@FAULTS_EVERY=1 B=$(B) tests/faults/check_faults

# Long walks of edits want speed more than sanitizers, which `make test` has.
$(B)/walks: tests/edits/test_edits.c $(patsubst src/%.c,$(B)/%.o,$(wildcard src/disk/*.c)) $(B)/libdishtake.a
	$(call say,CC) $(COMPILE) -Itests $(LDFLAGS) -o $@ $(filter %.c %.o %.a,$^) $(LDLIBS) -lcmocka

WALKS ?= 10000
walks: $(B)/walks ## WALKS=10000 random walks of edits, undone to the first bytes and redone
	@WALKS=$(WALKS) $<

tests: all $(B)/unite_units $(B)/name_units $(B)/line_units $(B)/prep_units $(B)/step_units $(B)/talk_units $(B)/sentence_units $(S)/dishtake $(B)/faults $(REPLAY_BIN) $(TEST_BIN)

packages: ## installs the Debian packages that are missing
	@.ci/packages $(PACKAGES) -- $(TEST_PACKAGES)

test: ## every test, after installing what is missing
	@.ci/packages $(PACKAGES) -- $(TEST_PACKAGES)
	@$(MAKE) --no-print-directory $(PARALLEL) tests
	@B=$(B) python3 tests/tools/run.py $(TEST_ALL) $(SPEC_RUN) $(ACCURACY_RUN)

demo: ## the main job on samples/, from a fresh machine
	@.ci/packages $(PACKAGES)
	@$(MAKE) --no-print-directory $(PARALLEL) all
	@sh samples/demo.sh $(B)

spec: all ## the spec files of spoken kitchen talk; SPEC=amounts-range shows the failures of one group
	@tests/spec/run_spec $(if $(SPEC),--verbose $(SPEC)) $(B)/dishtake

accuracy: all ## scores every recording that has gold, and fails below tests/accuracy's floors
	@bash tests/accuracy/accuracy.sh $(B)/dishtake

accuracy-tables: all ## writes the figures of now into docs/accuracy.md, to be read in the diff
	@python3 tests/accuracy/tables.py $(B)/dishtake

accuracy-stripped: all ## punctuated recordings as machines would have captioned them, beside what they score as they are
	@python3 tests/accuracy/stripped.py $(B)/dishtake

# Where sentences end without punctuation is learned from captions that have it.
PUNCTUATED = $(filter-out %.gold.json %/README.md %.py,$(wildcard samples/*.srt $(patsubst %,tests/%/*.*,corpus \
  recordings recordings/second recordings/flawless)))

$(B)/sentence_units $(B)/talk_units $(B)/name_units $(B)/line_units $(B)/prep_units $(B)/step_units $(B)/unite_units: $(B)/%: tests/tools/%.c tests/tools/read_file.h tests/tools/talk_reader.h tests/tools/recipe_reader.h $(B)/libdishtake.a
	$(call say,CC) $(COMPILE) $(LDFLAGS) -o $@ $(filter %.c %.a,$^) $(LDLIBS)

sentence-ends: $(B)/sentence_units ## makes grammars/en/sentence-ends.tsv anew, to be read in the diff
	@$(B)/sentence_units $(sort $(PUNCTUATED)) | python3 grammars/en/scripts/sentence_ends.py >$(B)/sentence-ends.tsv \
	  && mv $(B)/sentence-ends.tsv grammars/en/

turn-words: $(B)/talk_units ## makes grammars/en/turn-words.tsv anew, and prints the weights for src/split/border.def
	@python3 grammars/en/scripts/turn_words.py $(B)/talk_units >$(B)/turn-words.tsv && mv $(B)/turn-words.tsv grammars/en/

alike-weights: $(B)/unite_units ## makes the weights of src/split/alike.def anew; build again after it
	@python3 grammars/en/scripts/alike_weights.py $(B)/unite_units

talked-weights: $(B)/unite_units $(B)/talk_units ## makes rows of grammars/en/turn-words.tsv and the weights of src/split/talked.def anew; build again after it
	@python3 grammars/en/scripts/talked_weights.py $(B)/unite_units $(B)/talk_units

name-weights: all $(B)/name_units ## makes the weights of src/split/name.def anew; build again after it
	@python3 grammars/en/scripts/name_weights.py $(B)

prep-odds: $(B)/prep_units $(B)/dishtake ## makes grammars/en/prep-odds.tsv, prep-foods.tsv and the weights of src/build/prepodds.def anew; build again after it
	@python3 grammars/en/scripts/prep_odds.py $(B)/prep_units $(B)/dishtake

line-odds: $(B)/line_units ## makes grammars/en/line-odds.tsv and the weights of src/build/lineodds.def anew; build again after it
	@python3 grammars/en/scripts/line_odds.py $(B)/line_units

step-odds: $(B)/step_units ## makes grammars/en/step-odds.tsv and the weights of src/build/told.def anew; build again after it
	@python3 grammars/en/scripts/step_odds.py $(B)/step_units

accept: all $(S)/tests/whole/test_whole ## raises the floors to what is reached and writes tests/whole anew, to be read in the diff
	@python3 tests/accuracy/accept.py $(B)/dishtake
	@ACCEPT=1 $(S)/tests/whole/test_whole >/dev/null
	@ACCEPT=1 B=$(B) python3 tests/whole/test_same.py 2>/dev/null

# ---- coverage: without sanitizers, whose checks would count as branches. Left out is what takes long and reaches nothing
# that the others do not, and what looks at each write, since counts are written too.
COVERAGE = B=$(B)/cov CFLAGS="-O0 -g --coverage" LDFLAGS=--coverage SAN=
COVERED = $(filter-out $(filter %.py %/check_package,$(TEST_LONG)) tests/faults/check_faults \
          tests/api/test_install.py,$(TEST_ALL))

coverage: ## lines and branches of the core that the tests reach, by gcov
	@$(MAKE) --no-print-directory $(PARALLEL) $(COVERAGE) tests
	@find $(B)/cov -name '*.gcda' -delete
	@$(MAKE) --no-print-directory $(COVERAGE) covered
	@python3 tests/tools/coverage.py $(B)/cov $(CORE_DIRS)

covered:
	@B=$(B) python3 tests/tools/run.py $(COVERED) $(SPEC_RUN) $(ACCURACY_RUN) || echo "coverage all the same:"

FAULTS ?= 40
SEED ?= 1
mutants: ## FAULTS=40 small faults (SEED=1) put into a copy of the core (or of IN="read check split/talked.c"), one at a time: how many the tests notice
	@python3 tests/tools/mutants.py $(B)/mutants $(FAULTS) $(SEED) $(IN)

# ---- speed: see docs/gates.md. Only instructions are a gate, since times drift from run to run.
$(B)/bench/icu: tests/bench/icu.c
	@mkdir -p $(@D)
	$(call say,CC) $(CC) -O2 -o $@ $< $$(pkg-config --cflags --libs icu-uc)

$(B)/bench/%: tests/bench/%.c
	@mkdir -p $(@D)
	$(call say,CC) $(CC) -O2 -std=c11 $(WARN) -o $@ $<

BENCH_BIN = $(patsubst %,$(B)/bench/%,gen run empty)

bench: all $(BENCH_BIN) $(B)/bench/icu ## throughput and memory, beside public yardsticks, as Markdown
	@sh tests/bench/bench.sh $(B)

bench-nlp: all $(BENCH_BIN) ## whole runs beside general language libraries from npm, as Markdown
	@sh tests/bench/nlp.sh $(B)

bench-instr: all $(BENCH_BIN) ## instructions at the start and a byte, by cachegrind: fails above the floors
	@sh tests/bench/instr.sh $(B)

bench-stages: all $(BENCH_BIN) ## instructions of each stage on an hour, by callgrind
	@sh tests/bench/stages.sh $(B)

# ---- fuzzing: clang's libFuzzer; seeds in tests/fuzz/seeds/NAME/, findings stay in $(B)/fuzz
SECONDS ?= 60
F = $(B)/fuzz
FUZZ = -fsanitize=address,undefined -fno-sanitize-recover=all -O1 -g -DARENA_MALLOC
FUZZ_BIN = $(patsubst %.c,$(F)/%,$(wildcard tests/fuzz/fuzz_*.c))
# Only these compare the input's own bytes. Elsewhere telling the fuzzer of each comparison found nothing more and took a
# third of the time.
FUZZ_COMPARED = base pack read review edits
FUZZ_TOLD = $(if $(filter $(FUZZ_COMPARED:%=src/%/),$(<D)/),,-fno-sanitize-coverage=trace-cmp)

$(F)/tests/fuzz/fuzz_same: LDLIBS += -Wl,--wrap=groups_find

$(F)/%.o: src/%.c
	@mkdir -p $(@D)
	$(call say,CC) clang $(CPPFLAGS) $(LIBRARY_FLAGS) $(STD) $(FUZZ) -fsanitize=fuzzer-no-link $(FUZZ_TOLD) -c -o $@ $<

$(F)/libcore.a: $(call CORE_O,$(F))
	$(call say,AR) rm -f $@ && ar qcs $@ $^

$(F)/tests/%: tests/%.c $(F)/libcore.a
	@mkdir -p $(@D)
	$(call say,CC) clang $(CPPFLAGS) $(LIBRARY_FLAGS) $(STD) $(FUZZ) -Itests -fsanitize=fuzzer -o $@ $(filter %.c %.a,$^) $(LDLIBS)

fuzz: ## every fuzz target for SECONDS=60 each, with clang
	@$(MAKE) --no-print-directory $(PARALLEL) $(FUZZ_BIN)
	@bash tests/tools/fuzz.sh $(SECONDS) $(FUZZ_BIN)

# ---- checks of the source
SOURCES = $(shell find src include tests -name '*.[ch]' | LC_ALL=C sort)

format: ## lays out every source file with clang-format
	$(Q)clang-format -i $(SOURCES)

check: ## format, lint, banned calls, purity of the core, both compilers
	@.ci/packages $(PACKAGES) $(CHECK_PACKAGES) -- $(TEST_PACKAGES)
	@mkdir -p $(B) && CC="$(CC)" bash tests/tools/check.sh $(B) "$(CORE_DIRS)" "$(CPPFLAGS) $$(pkg-config --cflags $(LIBRARIES)) -std=c11"

install: all ## program, libraries, header, pkg-config file, under PREFIX (and DESTDIR)
	install -d $(DESTDIR)$(PREFIX)/bin $(DESTDIR)$(PREFIX)/lib/pkgconfig $(DESTDIR)$(PREFIX)/include
	install -m 755 $(B)/dishtake $(DESTDIR)$(PREFIX)/bin/
	install -m 644 $(B)/libdishtake.a $(DESTDIR)$(PREFIX)/lib/
	install -m 755 $(B)/$(SONAME) $(DESTDIR)$(PREFIX)/lib/
	ln -sf $(SONAME) $(DESTDIR)$(PREFIX)/lib/libdishtake.so
	install -m 644 include/dishtake.h $(DESTDIR)$(PREFIX)/include/
	install -m 644 $(B)/dishtake.pc $(DESTDIR)$(PREFIX)/lib/pkgconfig/
	install -D -m 644 $(B)/manual/dishtake.1 $(DESTDIR)$(PREFIX)/share/man/man1/dishtake.1
	install -D -m 644 $(B)/manual/dishtake.bash $(DESTDIR)$(PREFIX)/share/bash-completion/completions/dishtake
	install -D -m 644 $(B)/manual/_dishtake $(DESTDIR)$(PREFIX)/share/zsh/site-functions/_dishtake
	install -D -m 644 $(B)/manual/dishtake.fish $(DESTDIR)$(PREFIX)/share/fish/vendor_completions.d/dishtake.fish

deb: all ## a Debian package in the build folder, by dpkg-deb
	@.ci/deb $(B) $(VERSION)

uninstall: ## removes what install put there
	cd $(DESTDIR)$(PREFIX) && rm -f bin/dishtake lib/libdishtake.a lib/libdishtake.so lib/$(SONAME) include/dishtake.h \
	  lib/pkgconfig/dishtake.pc share/man/man1/dishtake.1 share/bash-completion/completions/dishtake \
	  share/zsh/site-functions/_dishtake share/fish/vendor_completions.d/dishtake.fish

clean: ## removes what was built
	rm -rf $(B)

help: ## this list
	@sed -n 's/^\([a-z-]*\):.*## \(.*\)/\1\t\2/p' Makefile | while IFS="$$(printf '\t')" read -r name text; do \
	  printf '  make %-10s %s\n' "$$name" "$$text"; done

-include $(shell find $(B) -name '*.d' 2>/dev/null)

FORCE:

.DELETE_ON_ERROR:
.SECONDARY:
.PHONY: FORCE all tests packages test demo spec accuracy accuracy-tables accuracy-stripped sentence-ends turn-words alike-weights talked-weights name-weights line-odds prep-odds step-odds accept coverage covered mutants bench bench-nlp bench-instr bench-stages faults walks fuzz format check install deb uninstall clean help
