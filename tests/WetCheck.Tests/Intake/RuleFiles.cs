using WetCheck.Intake;
using WetCheck.Model;
using Path = WetCheck.Model.Path;

namespace WetCheck.Tests.Intake;

/// <summary>A rule file and what it is read into.</summary>
public sealed class RuleFiles
{
    private const string Texts = """
        en:
          name: { one: liner too low, many: "{count} places where the liner is too low" }
          why: Water stands {short} over it.
          fix: Weld a strip on.
          owner: { seen: The sheet is low., ask: How high is it?, good: "{limit} or more." }
        """;

    [Fact]
    public void Conditions_of_every_sort()
    {
        var rule = Read($$"""
            rule: floor/example
            number: 950
            part: liner side
            when:
              drain.body: clamping
              job.steam: "no"
              code.plumbing: [IRC 2009.., IPC ..2006, UPC 2012, IRC 2009..2015]
              method: liner under mortar
              place: [left, right]
              any_of:
                - { top: { over: 0 in above rough curb, under: 12 in above rough curb } }
                - { curb.facing: [lath and mortar, moulded cap] }
            require:
              top: { at_least: limit above finished threshold }
            versions:
              - { when: { flood test.drop: { at_most: flood test.control drop } }, limit: 2 in, row: LN-01 }
              - { limit: 40 mm, row: [LN-02, LN-03] }
            row: LN-05
            severity: before cover
            work of: setter
            {{Texts}}
            """);
        var when = rule.When.Should().BeOfType<Condition.All>().Subject;
        when.Of.Select(Say).Should().Equal(
            "drain.body is clamping",
            "job.steam is no",
            "plumbing is IRC 2009-, IPC -2006, UPC 2012-2012, IRC 2009-2015",
            "method is liner under mortar",
            "place is left, right",
            "any of (all of (top Over 0 above rough curb; top Under 12 above rough curb); curb.facing is lath and mortar, moulded cap)");
        Say(((RuleBody.Require)rule.Body).Holds!).Should().Be("top AtLeast limit above finished threshold");
        rule.Versions.Select(version =>
            $"{(version.When is null ? "" : Say(version.When))} {version.Limit!.Value.Value} "
            + $"{string.Join(' ', version.Rows)}").Should().Equal(
            "flood test.drop AtMost flood test.control drop 2 LN-01", " 200/127 LN-02 LN-03");
        rule.Texts["en"].Many.Should().StartWith("{count}");
        (rule.Severity, rule.WorkOf, rule.Rows.Single(), rule.At.Line).Should().Be((Severity.BeforeCover, "setter", "LN-05", 1));
    }

    [Fact]
    public void Relations_and_conclusions()
    {
        var rule = Read("""
            rule: floor/example
            number: 950
            part: wall
            when: { some: { of: wall layer, is: membrane, each: { of: in front, is: [tile, mortar] } } }
            conclude: wicks
            climbs: [shower]
            en: { why: So it does. }
            """);
        Say(rule.When!).Should().Be("some wall layer (all of (is is membrane; each InFront (is is tile, mortar)))");
        rule.Body.Should().BeOfType<RuleBody.Conclude>().Which.Climbs.Should().Equal("shower");
        rule.Body.As<RuleBody.Conclude>().Reading.Is.Should().Be(Form.Conclusion);
    }

    [Fact]
    public void Cautions_and_notes()
    {
        var caution =
            Read("rule: floor/example\nnumber: 950\npart: job\nwhen: { built: { under: 1978 } }\ncaution: yes\nfrom: "
                + "before liner\nuntil: before tile\nen: { say: Old paint., two: Old paint may hold lead. Keep it wet. }");
        caution.Body.Should().Be(new RuleBody.Caution("before liner", "before tile"));
        caution.Texts["en"].Two.Should().StartWith("Old paint");
        Read("rule: floor/example\nnumber: 950\npart: job\nwhen: { steam: \"yes\" }\nnote: yes\nen: { say: Steam., "
            + "why: It climbs. }").Body.Should().Be(new RuleBody.Note());
    }

    [Fact]
    public void Versions_may_carry_all_requirements()
    {
        var rule = Read($"rule: floor/example\nnumber: 950\npart: curb\nversions:\n  - {{ require: {{ width: {{ "
            + $"at_least: 4 in }} }}, row: CB-01 }}\nseverity: touch-up\nwork of: plumber\n{Texts}");
        rule.Body.Should().Be(new RuleBody.Require(null));
        Say(rule.Versions.Single().Require!).Should().Be("width AtLeast 4");
    }

    [Fact]
    public void All_that_is_wrong_with_a_rule_is_told_at_once() =>
        BookText.With([("floor/example.yaml", $$"""
            rule: floor/exmaple
            number: 0
            part: curb
            when: { drain.bdoy: clamping, facing: tile, width: { at_lest: 4 in } }
            require: { height: { at_least: 2 in } }
            severity: soon
            work of: baker
            {{Texts}}
            """)]).Problems.Select(problem => $"{problem.At.Line}:{problem.Code}").Should().Equal(
            "1:path-differs", "2:number-wanted", "4:unknown-name", "4:unknown-choice", "4:unknown-name", "5:no-datum",
                "6:unknown-name", "7:unknown-name");

    [Fact]
    public void The_book_of_the_repository_is_read_without_a_word()
    {
        var (book, cases, problems) = RuleBookReader.Read(BookText.Files);
        problems.Select(problem => $"{problem.At} {problem.Say}").Should().BeEmpty();
        book!.Rules.Should().BeInAscendingOrder(rule => rule.Number);
        cases.Select(one => one.Rule).Distinct().Should().BeSubsetOf(book.Rules.Select(rule => rule.Id));
    }

    [Fact]
    public void A_case_keeps_the_place_of_its_job()
    {
        var (_, cases, problems) = BookText.With([
            ("floor/example.yaml",
                "rule: floor/example\nnumber: 950\npart: curb\nrequire: { width: { at_least: 4 in } }\nseverity: "
                + "touch-up\nwork of: setter\n" + Texts),
            ("floor/example.cases.yaml", """
                - name: between braces
                  job: { units: inches,
                         curb: { width: 4 } }  # not this
                  expect: { curb: ok }
                - name: line by line
                  job:
                    units: inches
                    curb:
                      width: 3-3/4
                  asks: [curb.width, method]
                  expect: { curb: To Check short on paper }
                """),
        ]);
        problems.Should().BeEmpty();
        cases.Select(one => one.Expect["curb"]).Should().Equal("ok", "to-check short on paper");
        cases[1].Asks.Should().Equal("curb.width", "method");
        var places =
            cases.Select(one => JobReader.Read("floor/example.cases.yaml", one.Job, BookText.Vocabulary)
            .Job!.Parts.Single(part => part.Part.Id == "curb").Of("width").Single().At);
        places.Select(at => at.ToString()).Should().Equal("floor/example.cases.yaml:3:25", "floor/example.cases.yaml:9:14");
    }

    [Fact]
    public void What_is_given_is_in_every_job_and_each_line_keeps_its_place()
    {
        var (_, cases, problems) = BookText.With([
            ("floor/example.yaml",
                "rule: floor/example\nnumber: 950\npart: curb\nrequire: { width: { at_least: 4 in } }\nseverity: "
                + "touch-up\nwork of: setter\n" + Texts),
            ("floor/example.cases.yaml", """
                given: { method: liner under mortar,
                         units: inches, stage: flood test }
                cases:
                  - name: as given
                    job: { curb: { width: 4 } }
                    expect: { curb: ok }
                  - name: another stage and method
                    job: { stage: last, method: curbless bonded,
                           curb: { width: 4 } }
                    expect: { curb: not-here }
                  - name: all of its own
                    job: { stage: last, units: millimetres, method: curbless bonded }
                    expect: { curb: not-here }
                """),
        ]);
        problems.Should().BeEmpty();
        var jobs = cases.Select(one => JobReader.Read("floor/example.cases.yaml", one.Job, BookText.Vocabulary)).ToList();
        jobs.SelectMany(read => read.Problems).Where(problem => problem.Effect != Effect.Asked).Should().BeEmpty();
        jobs.Select(read => $"{read.Job!.Method!.Name}, {read.Job.Stage}, {read.Job.Metric}").Should()
            .Equal("liner under mortar, flood test, False", "curbless bonded, last, False", "curbless bonded, last, True");
        jobs.Take(2).Select(read => read.Job!.Parts.Single(part => part.Part.Id == "curb").Of("width").Single().At.ToString()).Should()
            .Equal("floor/example.cases.yaml:5:27", "floor/example.cases.yaml:9:27");
    }

    [Theory]
    [InlineData("cases:\n- name: x\n  job:\n    units: inches\n  expect: { curb: ok }", "5:5:braces-wanted")]
    [InlineData("cases: 3", "2:8:list-wanted")]
    [InlineData("caes: []", "2:1:unknown-line")]
    public void Where_lines_are_given_the_rest_is_as_told(string rest, string told) => BookText.With([
            ("floor/example.yaml",
                "rule: floor/example\nnumber: 950\npart: curb\nrequire: { width: { at_least: 4 in } }\nseverity: "
                + "touch-up\nwork of: setter\n" + Texts),
            ("floor/example.cases.yaml", "given: { units: inches }\n" + rest),
        ]).Problems.Select(problem => $"{problem.At.Line}:{problem.At.Column}:{problem.Code}").Should().Contain(told);

    [Fact]
    public void Words_lists_and_sources_are_kept_as_they_are()
    {
        var (book, _, problems) = BookText.With([
            ("words/en.yaml", "yes: Yes\nverdict:\n  ready: Nothing owed\n"),
            ("lists/punch.html.scriban", "{{ job }}"),
            ("materials.yaml", ""),
            ("sources.yaml",
                "LN-01:\n  - { publisher: ICC, document: IRC, section: P2709.2, editions: 2009 to 2021, of: IRC, status: second-hand }\n"),
        ]);
        problems.Should().BeEmpty();
        book!.Words["en"].Should().Contain("verdict.ready", "Nothing owed").And.Contain("yes", "Yes");
        book.Lists["punch.html"].Should().Be("{{ job }}");
        book.Sources["LN-01"].Single().Should()
            .Be(new SourceEntry("LN-01", "ICC", "IRC", "P2709.2", "2009 to 2021", "IRC", SourceStatus.SecondHand));
    }

    private static Rule Read(string text)
    {
        var (book, _, problems) = BookText.With([("floor/example.yaml", text)]);
        problems.Select(problem => $"{problem.At} {problem.Say}").Should().BeEmpty();
        return book!.Rules.Single();
    }

    private static string Say(Condition condition) => condition switch
    {
        Condition.All all => $"all of ({string.Join("; ", all.Of.Select(Say))})",
        Condition.AnyOf any => $"any of ({string.Join("; ", any.Of.Select(Say))})",
        Condition.Some some => $"some {some.Of.Kind ?? some.Of.To.ToString()} ({Say(some.Meets)})",
        Condition.Each each => $"each {each.Of.Kind ?? each.Of.To.ToString()} ({Say(each.Meets)})",
        Condition.Is test => $"{Say(test.Path)} is {string.Join(", ", test.OneOf)}",
        Condition.CodeIs code =>
            $"{code.Discipline} is {string.Join(", ", code.OneOf.Select(range => $"{range.Family} {range.From}-{range.To}"))}",
        Condition.MethodIs method => $"method is {string.Join(", ", method.OneOf)}",
        Condition.PlaceIs place => $"place is {string.Join(", ", place.OneOf)}",
        Condition.Compare compare =>
            $"{Say(compare.Path)} {compare.By} {Say(compare.To)}{(compare.To.Datum is { } datum ? " above " + datum : "")}",
        _ => "?",
    };

    private static string Say(Path path) => path.Kind is null ? path.Reading.Name : $"{path.Kind}.{path.Reading.Name}";

    private static string Say(Operand operand) => operand switch
    {
        Operand.Fixed number => number.Quantity.Value.ToString(),
        Operand.Limit => "limit",
        Operand.Of of => Say(of.Path),
        _ => "?",
    };
}
