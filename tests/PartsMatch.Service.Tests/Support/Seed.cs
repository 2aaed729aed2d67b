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

    public static void WriteTo(TestFolder folder)
    {
        folder.Write("motors.csv", Motors);
        folder.Write("capacitors.csv", Capacitors);
        folder.Write("stock.csv", Stock);
        folder.Write("supersessions.csv", Supersessions);
    }
}
