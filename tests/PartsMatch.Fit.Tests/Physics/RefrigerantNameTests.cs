using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Physics;

[Trait("Source", "refrigerant-classes.csv")]
public sealed class RefrigerantNameTests
{
    [Theory]
    [InlineData("R404A", "R-404A")]
    [InlineData("R-404A", "R-404A")]
    [InlineData("404a", "R-404A")]
    [InlineData("R 404 A", "R-404A")]
    [InlineData(" r-134A ", "R-134a")]
    [InlineData("R‑22", "R-22")]
    [InlineData("R507", "R-507A")]
    [InlineData("propane", "R-290")]
    [InlineData("CO2", "R-744")]
    [InlineData("carbon dioxide", "R-744")]
    [InlineData("R1234ze(E)", "R-1234ze(E)")]
    public void A_refrigerant_is_found_as_plates_write_it(string text, string name)
    {
        Refrigerants.Find(text)!.Name.ShouldBe(name);
        Refrigerant.Form.Read(text).Value!.Name.ShouldBe(name);
    }

    [Theory]
    [InlineData("R-404")]
    [InlineData("R-404B")]
    [InlineData("R-134")]
    [InlineData("R-407")]
    [InlineData("R-507B")]
    [InlineData("R-1234ze")]
    [InlineData("R-1234ze(Z)")]
    [InlineData("RR-22")]
    [InlineData("R")]
    [InlineData("")]
    [InlineData("R-404A R-22")]
    public void What_is_only_near_a_name_is_unknown(string text) => Refrigerants.Find(text).ShouldBeNull();

    [Fact]
    public void A_refusal_lists_those_that_are_known()
    {
        var wrong = Refrigerant.Form.Read("R-404").Wrong!;
        wrong.ShouldStartWith("“R-404” is not one of: R-12, R-22, ");
        foreach (var one in Refrigerants.All) wrong.ShouldContain(one.Name);
        Refrigerant.Form.Read(" ").Wrong.ShouldBe("nothing is written");
    }

    // ASHRAE 34, from memory.
    [Theory]
    [InlineData("R-744", "A1", false)]
    [InlineData("R-717", "B2L", true)]
    [InlineData("R-32", "A2L", true)]
    [InlineData("R-1234yf", "A2L", true)]
    [InlineData("R-454B", "A2L", true)]
    [InlineData("R-454C", "A2L", true)]
    [InlineData("R-455A", "A2L", true)]
    [InlineData("R-600a", "A3", true)]
    [InlineData("R-407A", "A1", false)]
    public void Without_equations_a_refrigerant_is_known_by_name_and_class_only(string name, string safetyClass, bool flammable)
    {
        var one = Refrigerants.Find(name)!;
        (one.SafetyClass, one.IsFlammable, one.HasCurve).ShouldBe((safetyClass, flammable, false));
        one.ClassSource.Status.ShouldBe(SourceStatus.Memory);
        one.BubblePressure(UnitsNet.Temperature.FromDegreesCelsius(0)).ShouldBeNull();
        one.DewTemperature(UnitsNet.Pressure.FromBars(5)).ShouldBeNull();
        (one.CurveSource is null, one.LeastTemperature is null, one.MostTemperature is null).ShouldBe((true, true, true));
    }

    [Fact]
    public void Nine_have_equations_and_two_of_those_are_fits_of_ours()
    {
        Refrigerants.All.Where(one => one.HasCurve).Select(one => one.Name)
            .ShouldBe(["R-22", "R-134a", "R-290", "R-404A", "R-407C", "R-410A", "R-448A", "R-449A", "R-507A"]);
        Refrigerants.All.Where(one => one.CurveSource?.Status == SourceStatus.Derived).Select(one => one.Name).ShouldBe(["R-448A", "R-449A"]);
    }

    [Fact]
    public void The_text_form_is_found_by_type_and_reads_back_all_it_writes()
    {
        var form = TextForms.Of<Refrigerant>();
        form.Read(form.Example).Value!.ToString().ShouldBe("R-404A");
        foreach (var one in Refrigerants.All) form.Read(form.Write(one)).Value.ShouldBeSameAs(one);
        foreach (var word in form.Words) form.Read(word).IsRead.ShouldBeTrue(word);
    }
}
