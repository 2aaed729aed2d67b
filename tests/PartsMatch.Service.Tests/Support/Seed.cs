namespace PartsMatch.Service.Tests.Support;

/// <summary>A catalogue small enough to keep in one's head: invented makers, invented numbers.</summary>
internal static class Seed
{
    private const string Motors = """
        number,maker,title,status,power,speed,voltage,phase,frequency,shaftDiameter
        QN-100,Quennor,fan motor 1/4 hp,current,1/4 hp,1075 rpm,208-230 V,1,60 Hz,1/2 in
        QN-200,Quennor,fan motor 1/4 hp 230 V only,current,1/4 hp,1075 rpm,230 V,1,60 Hz,1/2 in
        QN-300,Quennor,fan motor 1/3 hp,current,1/3 hp,1075 rpm,208-230 V,1,60 Hz,5/8 in
        ZV-7,Zavvo,fan motor made no more,discontinued,1/4 hp,1075 rpm,208-230 V,1,60 Hz,1/2 in
        ZV-8,Zavvo,fan motor taken out,retired,1/4 hp,1075 rpm,208-230 V,1,60 Hz,1/2 in
        ZV-9,Zavvo,three-phase fan motor,current,1/4 hp,1075 rpm,208-230 V,3,60 Hz,1/2 in
        """;

    private const string Capacitors = """
        number,maker,title,status,rating,tolerance
        CK-5,Ombrel,5 microfarads,current,5 µF 370 V,6 %
        """;

    private const string Stock = """
        number,price,currency,onHand
        QN-100,84.50,USD,3
        QN-300,91,USD,0
        """;

    private const string Supersessions = """
        number,supersededBy,saidBy,on
        ZV-7,QN-100,maker,2021-04-30
        """;

    private const string Outcomes = """
        id,kind,on,place,oldPart,plate,site,part,result,reason,note,corrects
        job-1,motor,2026-01-12,cold store 4,ZV-7,,volts=202 V,QN-100,came back,failed again,,
        job-2,motor,2026-01-10,cold store 4,,power=1/4 hp; speed=1075 rpm,volts=230 V,QN-200,right first time,,went in at once,
        job-3,motor,2026-02-01,greenhouse,ZV-7,,,QN-300,reworked,more to change than foreseen,"hub bored out; sleeve made",
        job-4,capacitor,2026-02-02,greenhouse,,,,CK-5,came back,was not the part,,
        job-1a,motor,2026-01-13,cold store 4,ZV-7,,volts=202 V,QN-100,came back,did not do the job,,job-1
        """;

    public static void WriteTo(TestFolder folder)
    {
        folder.Write("motors.csv", Motors);
        folder.Write("capacitors.csv", Capacitors);
        folder.Write("stock.csv", Stock);
        folder.Write("supersessions.csv", Supersessions);
        folder.Write("outcomes.csv", Outcomes);
    }
}
