using WetCheck.Intake;
using WetCheck.Model;
using WetCheck.Reporting;

namespace WetCheck.Tests.Reporting.Start;

/// <summary>Ways a job may start: every method at every stop, in inches and millimetres, and with nothing known.</summary>
internal static class Starts
{
    public static TheoryData<string, string, string, string> All
    {
        get
        {
            var all = new TheoryData<string, string, string, string>();
            foreach (var language in (string[])["en", "es"])
            {
                all.Add("", "", "", language);
                foreach (var method in TheBook.Book.Vocabulary.Methods)
                {
                    all.Add(method.Name, "", "", language);
                    foreach (var stop in method.Stops)
                    {
                        all.Add(method.Name, stop.Name, stop == method.Stops[0] ? "900 x 900 mm" : "60 x 36 to studs", language);
                    }
                }
            }

            return all;
        }
    }

    public static Job Job(string method, string stage, string size, string codes = "")
    {
        var first = new FirstJob("Alder Lane, hall bath", TheBook.Book.Vocabulary);
        new[] { first.Method(method), first.Stage(stage), first.Size(size), first.Codes(codes) }.Should()
            .OnlyContain(unread => unread == null);
        return first.Job;
    }

    public static string File(string method, string stage, string size, string language) =>
        StartFile.Of(Job(method, stage, size), TheBook.Book, language);
}
